#pragma once

#include "sheets/pages/pages.h"

namespace bastewright::sheets {

/// How the backing of a quilt is cut and sewn: every fabric with its cuts, then the finished
/// backing. `pictures`: how large they are, 1 or less. Empty where the plan has none.
Flow cutBacking(const SheetContext& c, std::size_t quilt, double width, double pictures = 1);

/// How its batting is joined or trimmed.
Flow cutBatting(const SheetContext& c, std::size_t quilt, double width, double pictures = 1);

} // namespace bastewright::sheets
