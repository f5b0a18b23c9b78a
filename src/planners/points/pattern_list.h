#pragma once

#include "planners/points/grid_layout.h"

namespace bastewright::points {

/// The patterns of a layout for people: the block (or group of blocks), what is
/// added along each side, and the corners, each from the head-left corner of
/// its own tile.
std::vector<PointPattern> patternList(const Job& job, const Rules& rules, const GridLayout& layout);

} // namespace bastewright::points
