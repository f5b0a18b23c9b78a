#pragma once

#include <cstdint>
#include <random>

namespace bastewright::crew {

/// Seeded random numbers, equal on every machine (the standard's distributions are not).
class Random {
public:
    explicit Random(std::uint64_t seed)
        : engine_(seed) {}

    /// 0 … n − 1; n > 0. The bias of the plain remainder is below 2⁻³² for any n used here.
    int below(int n) { return static_cast<int>(engine_() % static_cast<std::uint64_t>(n)); }

    /// 0 <= u < 1.
    double unit() { return static_cast<double>(engine_() >> 11U) * 0x1p-53; }

private:
    std::mt19937_64 engine_;
};

} // namespace bastewright::crew
