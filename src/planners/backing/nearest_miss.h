#pragma once

#include "planners/backing/layout.h"

namespace bastewright::backing {

/// Looks for the smallest change that would save at least half a yard (50 cm) or a whole length,
/// and writes it as `plan.nearestMiss`: less overage (in steps of 1/8 in or 2.5 mm, by at most 2 in
/// and never below 1 in), a seam on the centre line, narrower seam allowances, or a column of
/// another cloth, which is also added to `plan.alternatives`.
void nearestMiss(const Problem& problem, const Layout& chosen, BackingPlan& plan);

} // namespace bastewright::backing
