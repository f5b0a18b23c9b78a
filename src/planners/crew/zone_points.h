#pragma once

#include "plan/plan.h"

#include <vector>

namespace bastewright {

/// The points of a quilt's zones.
std::vector<PlacedPoint> pointsOfZones(const QuiltPlan& quilt);
std::vector<std::vector<PlacedPoint>> pointsOfZones(const std::vector<QuiltPlan>& quilts);

} // namespace bastewright
