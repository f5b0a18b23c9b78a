#pragma once

#include "plan/plan.h"

#include <span>
#include <vector>

namespace bastewright {

/// True where two people would stand in one another's place.
bool inTheWay(const StandingPlace& a, const StandingPlace& b);

/// Places for so many people spread evenly round the open sides of a table as it lies in a pass,
/// clear of those taken as long as there is room; none where every side is closed.
std::vector<StandingPlace> roundTheTable(const Pass& pass, const SurfacePlan& surface,
                                         std::size_t people, std::span<const StandingPlace> taken);

} // namespace bastewright
