#pragma once

#include "measures/geometry.h"

#include <vector>

namespace bastewright {

/// A plane area made of upright rectangles that share no area: one rectangle, an L, a strip on each
/// side of another. Two regions with the same area may be cut into different parts; `operator==`
/// compares the parts.
struct Region {
    std::vector<Rect> parts;

    Region() = default;
    // Implicit, because a rectangle is a region of one part.
    Region(const Rect& whole) { // NOLINT(google-explicit-constructor)
        if (!whole.empty())
            parts.push_back(whole);
    }
    explicit Region(std::vector<Rect> disjoint)
        : parts{std::move(disjoint)} {}

    auto operator<=>(const Region&) const = default;

    bool empty() const { return parts.empty(); }

    /// The smallest rectangle round all parts; empty where there is none.
    Rect bounds() const {
        Rect all = parts.empty() ? Rect{} : parts.front();
        for (const Rect& r : parts)
            all = {std::min(all.x0, r.x0), std::min(all.y0, r.y0), std::max(all.x1, r.x1),
                   std::max(all.y1, r.y1)};
        return all;
    }

    bool contains(Point p) const {
        return std::ranges::any_of(parts, [p](const Rect& r) { return r.contains(p); });
    }

    /// True where the region and the rectangle share area.
    bool overlaps(const Rect& o) const {
        return std::ranges::any_of(parts, [&o](const Rect& r) { return r.overlaps(o); });
    }

    Region moved(Vec by) const {
        Region out = *this;
        for (Rect& r : out.parts)
            r = r.moved(by);
        return out;
    }
};

/// What of a rectangle lies outside another: up to four parts, those beside it as tall as the
/// shared part.
inline Region without(const Rect& whole, const Rect& cut) {
    const Rect shared = intersection(whole, cut);
    if (shared.empty())
        return whole;
    Region out;
    for (const Rect& part : {Rect{whole.x0, whole.y0, whole.x1, shared.y0},
                             Rect{whole.x0, shared.y0, shared.x0, shared.y1},
                             Rect{shared.x1, shared.y0, whole.x1, shared.y1},
                             Rect{whole.x0, shared.y1, whole.x1, whole.y1}})
        if (!part.empty())
            out.parts.push_back(part);
    return out;
}

/// What of a region lies outside a rectangle.
inline Region without(const Region& whole, const Rect& cut) {
    Region out;
    for (const Rect& r : whole.parts) {
        const Region rest = without(r, cut);
        out.parts.insert(out.parts.end(), rest.parts.begin(), rest.parts.end());
    }
    return out;
}

/// True where a region holds all of a rectangle.
inline bool contains(const Region& whole, const Rect& part) {
    Region rest = part;
    for (const Rect& r : whole.parts)
        rest = without(rest, r);
    return rest.empty();
}

inline double areaSquareInches(const Region& region) {
    double sum = 0;
    for (const Rect& r : region.parts)
        sum += areaSquareInches(r);
    return sum;
}

} // namespace bastewright
