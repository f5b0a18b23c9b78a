#pragma once

#include "sheets/pages/pages.h"

namespace bastewright::sheets {

/// Width of the column beside the picture of a pass that is at most `tallest` high; of the page
/// where the picture is so wide that the column stands below it.
double besidePicture(const SheetContext& c, std::size_t quilt, const Pass& pass, double tallest);

/// The picture of a pass with its facts in a column beside or below it; into later passes the shift
/// is drawn with them. `more` stands under the facts and is as wide as that column. Never divided;
/// stays with what follows.
Block passPicture(const SheetContext& c, std::size_t quilt, const Pass& pass, double tallest,
                  Flow more);

} // namespace bastewright::sheets
