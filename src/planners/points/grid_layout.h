#pragma once

#include "plan/plan.h"
#include "planners/points/layout.h"
#include "planners/points/pattern_memory.h"
#include "planners/points/repeat_search.h"

#include <optional>
#include <stop_token>

namespace bastewright::points {

/// The blocks of the job's grid as they lie on the top; none without a grid.
std::optional<BlockFrame> frameOf(const Job& job);

/// A layout that repeats, and how.
struct GridLayout {
    Layout layout;
    RepeatFrame frame;
    RepeatLayout repeat;
    bool regular = true; ///< nothing had to be mended point by point
};

/// The layout with the fewest points found whose blocks are all alike; among
/// layouts within half a percent of it the plainest. None where no pattern
/// covers the tile.
///
/// `effort` 0 gives the first complete layout at once, as does a stop that is
/// already asked for.
std::optional<GridLayout> gridLayout(const Rules& rules, const BlockFrame& frame, int effort,
                                     PatternMemory* memory, std::stop_token stop);

} // namespace bastewright::points
