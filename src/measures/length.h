#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>

namespace bastewright {

/// A length as a whole number of nanometres.
///
/// 1 in = 25 400 000 nm exactly (international yard of 1959: 1 yd = 0.9144 m), so 1/64 in
/// (396 875 nm) and 0.001 mm are both exact and sums never drift. Differences may be negative.
/// Range: job files are limited to 1 km (10^12 nm) a value, far from the limits of 64 bits.
class Length {
public:
    constexpr Length() = default;

    static constexpr Length nanometres(std::int64_t n) { return Length{n}; }
    static constexpr Length inches(std::int64_t n) { return Length{n * kInch}; }
    /// Sixty-fourths of an inch.
    static constexpr Length inch64ths(std::int64_t n) { return Length{n * (kInch / 64)}; }
    static constexpr Length millimetres(std::int64_t n) { return Length{n * 1'000'000}; }
    /// Nearest nanometre to a computed number of inches (half away from zero).
    static constexpr Length nearestInches(double in) { return nearest(in * double(kInch)); }
    static constexpr Length nearestMillimetres(double mm) { return nearest(mm * 1e6); }

    constexpr std::int64_t nm() const { return nm_; }
    constexpr double in() const { return double(nm_) / double(kInch); }
    constexpr double mm() const { return double(nm_) / 1e6; }

    constexpr auto operator<=>(const Length&) const = default;

    constexpr Length operator-() const { return Length{-nm_}; }
    constexpr Length& operator+=(Length o) { return nm_ += o.nm_, *this; }
    constexpr Length& operator-=(Length o) { return nm_ -= o.nm_, *this; }
    friend constexpr Length operator+(Length a, Length b) { return a += b; }
    friend constexpr Length operator-(Length a, Length b) { return a -= b; }
    friend constexpr Length operator*(Length a, std::int64_t k) { return Length{a.nm_ * k}; }
    friend constexpr Length operator*(std::int64_t k, Length a) { return a * k; }
    /// Division that drops the remainder (towards zero).
    friend constexpr Length operator/(Length a, std::int64_t k) { return Length{a.nm_ / k}; }
    /// How often b goes into a, as a real number. b must not be zero.
    friend constexpr double ratio(Length a, Length b) { return double(a.nm_) / double(b.nm_); }
    /// Least whole number k with k·b >= a, for a >= 0 and b > 0.
    friend constexpr std::int64_t ceilDiv(Length a, Length b) {
        return (a.nm_ + b.nm_ - 1) / b.nm_;
    }

    static constexpr std::int64_t kInch = 25'400'000;

private:
    constexpr explicit Length(std::int64_t n)
        : nm_{n} {}
    static constexpr Length nearest(double n) {
        return Length{static_cast<std::int64_t>(n < 0 ? n - 0.5 : n + 0.5)};
    }
    std::int64_t nm_ = 0;
};

constexpr Length abs(Length a) {
    return a < Length{} ? -a : a;
}

inline namespace literals {
consteval Length operator""_in(unsigned long long n) {
    return Length::inches(static_cast<std::int64_t>(n));
}
/// Only decimals that are exact in nanometres compile.
consteval Length operator""_in(long double n) {
    const long double nm = n * static_cast<long double>(Length::kInch);
    const auto whole = static_cast<std::int64_t>(nm);
    if (static_cast<long double>(whole) != nm)
        throw std::invalid_argument("not a whole number of nanometres");
    return Length::nanometres(whole);
}
consteval Length operator""_mm(unsigned long long n) {
    return Length::millimetres(static_cast<std::int64_t>(n));
}
consteval Length operator""_cm(unsigned long long n) {
    return Length::millimetres(static_cast<std::int64_t>(n) * 10);
}
consteval Length operator""_yd(unsigned long long n) {
    return Length::inches(static_cast<std::int64_t>(n) * 36);
}
} // namespace literals

} // namespace bastewright
