#pragma once

#include "plan/plan.h"

namespace bastewright::check {

/// The points of a zone that a task is for, found by counting which lie nearer to its side.
std::vector<PlacedPoint> pointsOfTask(const Zone& zone, const Task& t);

} // namespace bastewright::check
