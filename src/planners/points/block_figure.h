#pragma once

#include "planners/points/rules.h"

#include <optional>

namespace bastewright::points {

/// A square block with the sashing beside it, as every block of a top has it.
struct BlockCell {
    Spot first; ///< head-left corner of the first block
    double block = 0, sashing = 0;
    int columns = 1, rows = 1;
    double pitch() const { return block + sashing; }
    Spot middle(int column, int row) const {
        return {first.x + column * pitch() + block / 2, first.y + row * pitch() + block / 2};
    }
};

/// The top's blocks; nothing where it has none, oblong ones, or fewer than two each way.
std::optional<BlockCell> blockCellOf(const Job& job);

/// One figure for every block, its own mirror image in every direction: at most three of the
/// middle, four on the cross, four on the diagonals, eight; with points in the sashing.
struct BlockFigure {
    Spots orbits;     ///< one point of each, from the block's middle, 0 <= y <= x
    int perStrip = 0; ///< evenly along each strip's middle
    bool post = false;
    int count = 0; ///< in a block with its share of the sashing
};

/// The images of a point under the turns and mirrors of a square.
Spots imagesOf(Spot point);
/// Points of a figure round one block's middle, those of the strips to its right and below it.
Spots pointsOf(const BlockFigure& figure, const BlockCell& cell);

/// The figure with the fewest points that covers block and sashing where blocks go on for ever; of
/// several the one with fewer kinds of places, then the one with most slack. Exact over its places:
/// on cross and diagonals every sixteenth of the spacing from the middle (a quarter at 4 in), of
/// the eights every eighth of it. Nothing with less than `below` points.
std::optional<BlockFigure> leastFigure(const Rules& rules, const BlockCell& cell, int below);

} // namespace bastewright::points
