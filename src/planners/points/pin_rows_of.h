#pragma once

#include "planners/points/row_search.h"

namespace bastewright::points {

/// What is told of rows: ribbons, rows, pins beside their marks. `pins` are those that are left of
/// the layout's, with single pins among them.
PinRows pinRowsOf(const RowLayout& layout, const Rules& rules, Unit unit, const Spots& pins);

/// The exact length of a number of raster steps.
Length rasterLength(int steps, Unit unit);

} // namespace bastewright::points
