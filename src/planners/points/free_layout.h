#pragma once

#include "planners/points/layout.h"

#include <stop_token>

namespace bastewright::points {

/// Fewer points than `start`, wherever they are needed, without regard to
/// blocks. Complete whenever it is stopped. `glance`: a fifth of the search, for an estimate.
Layout freeLayout(const Rules& rules, Layout start, int effort, bool glance, std::stop_token stop);

} // namespace bastewright::points
