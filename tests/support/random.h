#pragma once

#include "measures/length.h"

#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace bastewright {

/// Seeded numbers that are the same on every machine (the standard's distributions are not).
class Random {
public:
    explicit Random(std::uint64_t seed)
        : engine_{seed} {}

    /// lo to hi, ends included.
    std::int64_t whole(std::int64_t lo, std::int64_t hi) {
        const auto span = static_cast<std::uint64_t>(hi - lo) + 1;
        return lo + static_cast<std::int64_t>(engine_() % span);
    }
    int count(int lo, int hi) { return static_cast<int>(whole(lo, hi)); }
    bool chance(int percent) { return whole(1, 100) <= percent; }
    double real(double lo, double hi) {
        return lo + (hi - lo) * (static_cast<double>(engine_() >> 11) * 0x1p-53);
    }
    /// Now and then an end of the range, a whole eighth of an inch, or a whole tenth of a
    /// millimetre.
    Length length(Length lo, Length hi) {
        const auto any = Length::nanometres(whole(lo.nm(), hi.nm()));
        Length out = any;
        switch (whole(0, 4)) {
        case 0:
            out = Length::nanometres(any.nm() / (Length::kInch / 8) * (Length::kInch / 8));
            break;
        case 1:
            out = Length::nanometres(any.nm() / 100'000 * 100'000);
            break;
        case 2:
            return chance(20) ? lo : chance(20) ? hi : any;
        default:
            break;
        }
        return out < lo || out > hi ? any : out;
    }
    template <class T>
    const T& oneOf(const std::vector<T>& values) {
        return values[static_cast<std::size_t>(whole(0, std::ssize(values) - 1))];
    }
    /// A name with letters of several scripts, quotes and slashes; different for different
    /// `number`s.
    std::string name(int number) {
        static const std::vector<std::string> kParts{"Ada",   "Bö", "Ngọc", "d'Or", "\"Q\"",
                                                     "a/b~c", "木", "🧵", "\\",   "Dot "};
        std::string out = oneOf(kParts);
        return out.append(std::to_string(number));
    }

private:
    std::mt19937_64 engine_;
};

} // namespace bastewright
