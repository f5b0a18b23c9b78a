#pragma once

#include "planners/points/row_search.h"

#include <optional>

namespace bastewright::points {

/// Bands of spray: as few of equal depth as a spacing allows, from one edge of the top to the
/// other, each cut into patches of equal width, no wider than the spacing. A patch is told by its
/// middle, on the raster. Along the width where nothing is asked.
RowLayout patchRows(const Rules& rules, std::optional<PinRows::Along> along);

} // namespace bastewright::points
