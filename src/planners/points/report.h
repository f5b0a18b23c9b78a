#pragma once

#include "planners/points/points.h"
#include "planners/points/rules.h"

namespace bastewright::points {

/// Says where a rule could not be kept: how many, how near, and the first few places.
void report(PointsPlan& plan, const Job& job, const Rules& rules, const Spots& spots);

} // namespace bastewright::points
