#pragma once

#include "measures/geometry.h"

#include <span>
#include <vector>

namespace bastewright::check {

/// A place of an area that is farther than a radius from every centre.
struct Uncovered {
    Point at; ///< the deepest place found near the rim of the hole
    Length
        nearest; ///< distance to the nearest centre; the radius of a hole without any centre near
};

/// Holes that equal closed discs round `centres` leave in `area`, at most `limit` of them, each one
/// radius or more from the others.
///
/// Judged continuously, not by samples: discs cover a rectangle just where every circle's part
/// inside it, and every side of it, is covered by the other discs (the rim of a hole is made of
/// such parts). Parts shorter than `kShortestArcInches` are passed over.
std::vector<Uncovered> uncovered(const Rect& area, std::span<const Point> centres, Length radius,
                                 std::size_t limit);

} // namespace bastewright::check
