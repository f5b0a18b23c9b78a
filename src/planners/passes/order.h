#pragma once

#include "planners/passes/layout.h"

namespace bastewright {

/// An order of the areas, outward from the first: each follows all it needs. Least total shift.
struct WorkingOrder {
    std::vector<std::size_t> areas; ///< indices into Layout::areas
    Length shifted;                 ///< total way, along x plus along y
    bool exact = true;              ///< proven least; false where the search had to be cut short
};

/// Search over the sets of areas that can have been basted, layer by layer, keeping the shortest
/// way into each (set, last area). Exact as long as no layer holds more than `widest` of them,
/// which covers every layout of up to 20 passes and most larger ones; above that the shortest are
/// kept.
WorkingOrder bestOrder(const Layout& layout, std::size_t widest = 60'000);

/// The shortest way through all areas in any order from any of them, basted or not beside it: what
/// working outward costs is the difference. Exact up to ten areas (search over sets and last
/// areas); above that the least spanning tree, which no way is shorter than.
Length shortestWay(const Layout& layout);

/// How far the quilt moves between two areas, on the table: positive dx moves it to the right.
constexpr Vec shiftBetween(const FreshArea& from, const FreshArea& to) {
    return {from.table.x0 - to.table.x0, from.table.y0 - to.table.y0};
}

constexpr Length way(Vec shift) {
    return abs(shift.dx) + abs(shift.dy);
}

} // namespace bastewright
