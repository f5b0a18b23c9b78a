#pragma once

#include "plan/plan.h"

#include <span>

namespace bastewright {

/// Zones whose points could be dots so that at least `missing` pins are saved: the nearest to the
/// edge of the top first (where dots are farthest from the quilting's start and easiest to press),
/// none that the others make needless. In the plan's order of zones; empty where all of them
/// together hold too few.
std::vector<std::string> zonesForDots(std::span<const Zone> zones, Size top, std::int64_t missing);

/// Ids for people, runs down a column together: "A1 to A9, B1, B9".
Sentence zoneList(std::span<const std::string> ids);

} // namespace bastewright
