#pragma once

#include "planners/points/layout.h"

#include <stop_token>

namespace bastewright::points {

/// Points wherever they are needed least, without regard to blocks.
Layout freeLayout(const Rules& rules, int effort, std::stop_token stop);

} // namespace bastewright::points
