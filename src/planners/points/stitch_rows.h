#pragma once

#include "planners/points/row_search.h"

#include <optional>

namespace bastewright::points {

/// Rows of stitches: straight rows at most a spacing apart (less where the ends of stitches keep so
/// far from the edge that it would be bare between wider rows), the first as far inside the top as
/// `edge` asks, every row with its stitches at the same marks, at most `alongRow` from one to the
/// next. Rows and marks are spread evenly, to one step of the raster; `alongRow` lies between half
/// the spacing and all of it, so that no two are nearer than half the spacing.
/// Along the width where nothing is asked and both ways take as many.
RowLayout stitchRows(const Rules& rules, Length alongRow, std::optional<PinRows::Along> along);

} // namespace bastewright::points
