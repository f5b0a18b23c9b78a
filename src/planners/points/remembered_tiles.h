#pragma once

#include "planners/points/pattern_memory.h"
#include "planners/points/tile.h"

namespace bastewright::points {

/// `tilePatterns`, looked up first where there is a memory.
std::vector<TilePattern> rememberedTiles(PatternMemory* memory, const Rules& rules,
                                         const BlockFrame& frame, const TileRequest& request,
                                         std::stop_token stop);

} // namespace bastewright::points
