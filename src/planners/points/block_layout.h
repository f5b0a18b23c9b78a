#pragma once

#include "plan/pin_blocks.h"
#include "planners/points/layout.h"

#include <optional>

namespace bastewright::points {

struct BlockLayout {
    Layout layout; ///< single points are loose
    PinBlocks blocks;
};

/// The least figure in every block, with a line along each side of the top where the blocks leave
/// it bare, and single points for the rest. Nothing where no figure does or it takes `most` points
/// or more, or where a stop comes before it is complete.
std::optional<BlockLayout> blockLayout(const Job& job, const Rules& rules, std::size_t most,
                                       std::stop_token stop = {});

} // namespace bastewright::points
