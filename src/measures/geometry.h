#pragma once

#include "measures/length.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace bastewright {

/// A place on the quilt top: origin at its head-left corner, right side up, x to the right,
/// y towards the foot.
struct Point {
    Length x, y;
    auto operator<=>(const Point&) const = default;
};

/// A displacement in the same axes.
struct Vec {
    Length dx, dy;
    auto operator<=>(const Vec&) const = default;
};

struct Segment {
    Point from, to;
    auto operator<=>(const Segment&) const = default;
};

/// A closed range lo..hi; empty where hi < lo.
struct Interval {
    Length lo, hi;
    auto operator<=>(const Interval&) const = default;
    constexpr Length size() const { return hi - lo; }
    constexpr Length middle() const { return lo + (hi - lo) / 2; }
    constexpr bool contains(Length v) const { return lo <= v && v <= hi; }
    constexpr bool contains(Interval o) const { return lo <= o.lo && o.hi <= hi; }
    /// True where the two share more than one place.
    constexpr bool overlaps(Interval o) const { return lo < o.hi && o.lo < hi; }
};

constexpr Interval intersection(Interval a, Interval b) {
    return {std::max(a.lo, b.lo), std::min(a.hi, b.hi)};
}

/// An upright rectangle x0..x1 × y0..y1, x0 <= x1 and y0 <= y1.
struct Rect {
    Length x0, y0, x1, y1;
    auto operator<=>(const Rect&) const = default;
    constexpr Length width() const { return x1 - x0; }
    constexpr Length length() const { return y1 - y0; }
    constexpr Interval x() const { return {x0, x1}; }
    constexpr Interval y() const { return {y0, y1}; }
    constexpr Point middle() const { return {x().middle(), y().middle()}; }
    constexpr bool contains(Point p) const { return x().contains(p.x) && y().contains(p.y); }
    constexpr bool contains(const Rect& o) const {
        return x().contains(o.x()) && y().contains(o.y());
    }
    /// True where the two share area, not only an edge.
    constexpr bool overlaps(const Rect& o) const {
        return x().overlaps(o.x()) && y().overlaps(o.y());
    }
    constexpr bool empty() const { return x1 <= x0 || y1 <= y0; }
    constexpr Rect moved(Vec v) const { return {x0 + v.dx, y0 + v.dy, x1 + v.dx, y1 + v.dy}; }
    /// Each side moved outward by d (inward where d is negative).
    constexpr Rect grown(Length d) const { return {x0 - d, y0 - d, x1 + d, y1 + d}; }
};

constexpr Rect intersection(const Rect& a, const Rect& b) {
    return {std::max(a.x0, b.x0), std::max(a.y0, b.y0), std::min(a.x1, b.x1), std::min(a.y1, b.y1)};
}

/// Area in square inches, for bounds and reports.
constexpr double areaSquareInches(const Rect& r) {
    return r.empty() ? 0.0 : r.width().in() * r.length().in();
}

/// The four sides as the quilt lies right side up with its head away from the reader.
enum class Side { head, foot, left, right };
inline constexpr std::array kSides{Side::head, Side::foot, Side::left, Side::right};

constexpr std::string_view name(Side s) {
    switch (s) {
    case Side::head:
        return "head";
    case Side::foot:
        return "foot";
    case Side::left:
        return "left";
    case Side::right:
        return "right";
    }
    return "";
}
constexpr bool isAcross(Side s) {
    return s == Side::head || s == Side::foot;
}

/// One value for each side.
template <class T>
struct PerSide {
    T head{}, foot{}, left{}, right{};
    auto operator<=>(const PerSide&) const = default;
    constexpr T& operator[](Side s) {
        return s == Side::head ? head : s == Side::foot ? foot : s == Side::left ? left : right;
    }
    constexpr const T& operator[](Side s) const {
        return s == Side::head ? head : s == Side::foot ? foot : s == Side::left ? left : right;
    }
};

} // namespace bastewright
