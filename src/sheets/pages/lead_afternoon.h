#pragma once

#include "sheets/pages/pages.h"
#include "sheets/type.h"

namespace bastewright::sheets {

/// How closely the lead's sheet is set.
struct LeadSetting {
    double thumb = 80;     ///< height of a pass's picture
    bool callWords = true; ///< what each call asks for
    int text = type::kSmall;
};

/// The afternoon of a quilt from top to bottom: setting up, passes, breaks, who comes and goes,
/// rolling up.
std::vector<Block> afternoon(const SheetContext& c, std::size_t quilt, double width,
                             const LeadSetting& setting);

} // namespace bastewright::sheets
