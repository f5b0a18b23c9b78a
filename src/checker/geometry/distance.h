#pragma once

#include "measures/geometry.h"

#include <cmath>

namespace bastewright::check {

/// Exact where the two share a coordinate, else to the nearest nanometre.
inline Length distance(Point a, Point b) {
    const Length dx = abs(a.x - b.x), dy = abs(a.y - b.y);
    if (dx == Length{} || dy == Length{})
        return dx + dy;
    return Length::nearestInches(std::hypot(dx.in(), dy.in()));
}

/// Zero inside and on the rim.
inline Length distance(Point p, const Rect& r) {
    return distance(p, Point{std::clamp(p.x, r.x0, std::max(r.x0, r.x1)),
                             std::clamp(p.y, r.y0, std::max(r.y0, r.y1))});
}

} // namespace bastewright::check
