#pragma once

#include "plan/plan.h"
#include "planners/points/layout.h"
#include "planners/points/tile.h"

#include <optional>
#include <stop_token>

namespace bastewright::points {

std::optional<BlockFrame> frameOf(const Job& job);

/// A layout that repeats from block to block.
struct GridLayout {
    Layout layout;
    TilePattern tile;
};

/// The best layout found; none where no pattern fits the grid.
std::optional<GridLayout> gridLayout(const Rules& rules, const BlockFrame& frame, int effort,
                                     std::stop_token stop);

} // namespace bastewright::points
