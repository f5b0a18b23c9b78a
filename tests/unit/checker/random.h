#pragma once

#include <cstdint>
#include <random>

namespace bastewright::testing {

/// Numbers that are the same on every machine: the standard fixes the engine, not the
/// distributions.
class Random {
public:
    explicit Random(std::uint64_t seed)
        : engine_{seed} {}
    /// A whole number in lo..hi.
    std::int64_t whole(std::int64_t lo, std::int64_t hi) {
        return lo + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(hi - lo + 1));
    }
    /// A number in lo..hi, in steps of a millionth of the range.
    double real(double lo, double hi) { return lo + (hi - lo) * double(whole(0, 1'000'000)) / 1e6; }
    bool chance(int percent) { return whole(0, 99) < percent; }

private:
    std::mt19937_64 engine_;
};

} // namespace bastewright::testing
