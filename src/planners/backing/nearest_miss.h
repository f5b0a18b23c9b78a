#pragma once

#include "planners/backing/layout.h"

namespace bastewright::backing {

/// The smallest change that would save at least half a yard (50 cm) or a whole length, as a
/// sentence: less overage (in steps of 1/8 in or 2.5 mm, by at most 2 in and never below 1 in), a
/// seam on the centre line, less for squaring, or narrower seam allowances. Empty where none would.
Sentence nearestMiss(const Problem& problem, const Layout& chosen);

} // namespace bastewright::backing
