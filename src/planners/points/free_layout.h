#pragma once

#include "planners/points/layout.h"

#include <stop_token>

namespace bastewright::points {

/// A covering of a top with seams anywhere, to begin with: staggered rows as if
/// there were no seams, each point moved to the nearest place where it is
/// allowed, what is left open mended.
Layout snappedRows(const Rules& rules);

/// Fewer points than `start`, wherever they are needed, without regard to
/// blocks. Complete whenever it is stopped.
Layout freeLayout(const Rules& rules, Layout start, int effort, std::stop_token stop);

} // namespace bastewright::points
