#pragma once

#include "sheets/pages/pages.h"

namespace bastewright::sheets {

/// The ways of doing the passes that were weighed, of each quilt the chosen one and at most so many
/// in all, and what would help most. Empty where there was no choice.
Flow waysWeighed(const SheetContext& c, std::size_t most);

} // namespace bastewright::sheets
