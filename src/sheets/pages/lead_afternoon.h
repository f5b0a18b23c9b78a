#pragma once

#include "sheets/pages/pages.h"
#include "sheets/type.h"

namespace bastewright::sheets {

/// How closely the lead's sheet is set.
struct LeadSetting {
    double thumb = 80;  ///< height of a pass's picture
    bool close = false; ///< the calls in lines
    int text = type::kSmall;
};

/// The afternoon of a quilt from top to bottom: setting up, passes, breaks, who comes and goes,
/// rolling up.
std::vector<Block> afternoon(const SheetContext& c, std::size_t quilt, double width,
                             const LeadSetting& setting);

} // namespace bastewright::sheets
