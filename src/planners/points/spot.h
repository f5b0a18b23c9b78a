#pragma once

#include "measures/geometry.h"

#include <cstdint>
#include <vector>

namespace bastewright::points {

/// A place in inches, for the inside of the searches; results go back to exact
/// lengths.
struct Spot {
    double x = 0, y = 0;
    friend bool operator==(const Spot&, const Spot&) = default;
    friend Spot operator+(Spot a, Spot b) { return {a.x + b.x, a.y + b.y}; }
    friend Spot operator-(Spot a, Spot b) { return {a.x - b.x, a.y - b.y}; }
    friend Spot operator*(double k, Spot a) { return {k * a.x, k * a.y}; }
};

using Spots = std::vector<Spot>;

inline Point exact(Spot at) {
    return {Length::nearestInches(at.x), Length::nearestInches(at.y)};
}

/// Sines and cosines of 30, 45 and 60 degrees, written out: equal on every machine.
inline constexpr double kHalf = 0.5, kRoot2 = 0.70710678118654752, kRoot3 = 0.86602540378443865;

inline double squared(double v) {
    return v * v;
}
inline double distanceSquared(Spot a, Spot b) {
    return squared(a.x - b.x) + squared(a.y - b.y);
}

inline double dot(Spot a, Spot b) {
    return a.x * b.x + a.y * b.y;
}
inline double cross(Spot a, Spot b) {
    return a.x * b.y - a.y * b.x;
}

/// An upright rectangle in inches.
struct Field {
    double x0 = 0, y0 = 0, x1 = 0, y1 = 0;
    double width() const { return x1 - x0; }
    double length() const { return y1 - y0; }
    double area() const { return width() * length(); }
    bool contains(Spot p, double slack = 0) const {
        return p.x >= x0 - slack && p.x <= x1 + slack && p.y >= y0 - slack && p.y <= y1 + slack;
    }
    Field grown(double d) const { return {x0 - d, y0 - d, x1 + d, y1 + d}; }
};

/// A fixed sequence of pseudo-random numbers (SplitMix64: Steele, Lea and
/// Flood, OOPSLA 2014), equal on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : state_{seed} {}
    std::uint64_t roll() {
        std::uint64_t z = state_ += 0x9e3779b97f4a7c15ULL;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31);
    }
    /// 0 <= result < n; n > 0 and small against 2^64.
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(roll() % n); }

private:
    std::uint64_t state_;
};

} // namespace bastewright::points
