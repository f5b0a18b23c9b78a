#pragma once

#include "plan/plan.h"

#include <array>
#include <string>
#include <vector>

namespace bastewright {

/// The zones of one pass as tiles that lie as they lie on the table: what tablet and phones show.
struct PassTiles {
    struct Tile {
        const Zone* zone = nullptr;
        int column = 0, row = 0;
    };
    int columns = 1, rows = 1;
    std::vector<Tile> tiles; ///< in the plan's order
    /// The quilt's sides as they are seen: top, right, bottom, left.
    std::array<Side, 4> around{Side::head, Side::right, Side::foot, Side::left};
};

/// Turned by so many quarters of a circle, clockwise; at 0 the table's far long side is at the top.
/// The quilt must outlive it.
PassTiles tilesOf(const QuiltPlan& quilt, int pass, int quarters);

} // namespace bastewright
