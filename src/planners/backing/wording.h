#pragma once

#include "planners/backing/layout.h"

#include <string>

namespace bastewright::backing {

/// "5 1/2 yd", or in metric jobs "5.05 m".
std::string saleLength(Length bought, Unit unit);

/// "Harbour blue", or "cloth of 40 in" where it has no name.
std::string clothName(const Fabric& fabric, Unit unit);

/// What has to be found for a layout with a column of cloth that is not listed.
std::string unlistedText(const Problem& problem, const Layout& layout);

/// "2 lengths of 88 in along the quilt and a column 6 in wide of 3 blocks; 5 1/2 yd, 4 seams".
std::string describe(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout);

/// "5 1/2 yd", with the money where cloth has prices; "nothing" where all is on hand.
std::string purchase(const Problem& problem, const Layout& layout);

} // namespace bastewright::backing
