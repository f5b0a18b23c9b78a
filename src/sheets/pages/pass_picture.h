#pragma once

#include "sheets/pages/pages.h"

namespace bastewright::sheets {

/// The picture of a pass with its facts in a column beside it; into later passes the shift is drawn
/// above them. Stays with what follows.
Block passPicture(const SheetContext& c, std::size_t quilt, const Pass& pass);

} // namespace bastewright::sheets
