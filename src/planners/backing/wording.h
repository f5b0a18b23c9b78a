#pragma once

#include "planners/backing/layout.h"

namespace bastewright::backing {

/// "5 1/2 yd", or in metric jobs "5.05 m".
Sentence saleLength(Length bought, Unit unit);

/// "Harbour blue", or "cloth of 40 in" where it has no name.
Sentence clothName(const Fabric& fabric, Unit unit);

/// What has to be found for a layout with a column of cloth that is not listed.
Sentence unlistedText(const Problem& problem, const Layout& layout);

/// "saves 5/8 yd, 2 seams more": another layout beside the chosen one.
Sentence difference(const Problem& problem, const Layout& other, const Layout& chosen);

/// One sentence for each fabric, for the list to bring.
Sentences toBring(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout);

/// "4.5": a percentage as it was given.
Sentence percent(double value);

/// "2 lengths of 88 in along the quilt, with a strip 6 in wide, pieced from 3 lengths; 5 1/2 yd, 4
/// seams".
Sentence describe(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout);

/// "5 1/2 yd", with the money where cloth has prices; "nothing" where all is on hand.
Sentence purchase(const Problem& problem, const Layout& layout);

} // namespace bastewright::backing
