#pragma once

#include "sheets/pages/pages.h"

/// The calls on the lead's page.
namespace bastewright::sheets {

/// From left to right, each with its sign above its words; `close`: one after another in lines. Of
/// a quilt whose passes go by different calls those of each kind, in lines.
Flow callsOfQuilt(const SheetContext& c, std::size_t quilt, bool close);

} // namespace bastewright::sheets
