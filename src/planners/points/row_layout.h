#pragma once

#include "planners/points/grid_layout.h"

namespace bastewright::points {

/// Staggered rows for a top where nothing is in the way: the pattern that needs
/// fewest points for its area (Kershner, American Journal of Mathematics 61,
/// 1939), with distances in eighths of an inch (quarters of a centimetre)
/// stretched so that the rows end well at the edges.
std::optional<GridLayout> rowLayout(const Rules& rules, int effort, std::stop_token stop);

} // namespace bastewright::points
