#pragma once

#include "sheets/pages/pages.h"

namespace bastewright::sheets {

/// Width of the column beside the picture of a pass that is at most `tallest` high.
double besidePicture(const SheetContext& c, std::size_t quilt, const Pass& pass, double tallest);

/// The picture of a pass with its facts in a column beside it; into later passes the shift is drawn
/// above them. `below` stands under the facts and is as wide as that column. Never divided; stays
/// with what follows.
Block passPicture(const SheetContext& c, std::size_t quilt, const Pass& pass, double tallest,
                  Flow below);

} // namespace bastewright::sheets
