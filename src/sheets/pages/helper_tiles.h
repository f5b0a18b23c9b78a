#pragma once

#include "sheets/pages/helper_rows.h"

namespace bastewright::sheets {

/// The patterns of the quilts somebody places points on: small pictures in a row, all of a quilt to
/// one scale, each with its count. Nothing for people who place none.
Flow tilesOf(const SheetContext& c, const std::vector<Stretch>& all, double width,
             const ChecklistStyle& style);

} // namespace bastewright::sheets
