#pragma once

#include "plan/plan.h"

namespace bastewright::testing {

/// True where the top can be basted on some rectangle of the tables on hand by the plainest way
/// there is: a pass for every single point, row by row from one corner, each with the anchor of
/// what lies basted beside it on the table and within somebody's reach. Looked for with none of the
/// planner's code; any other way does more at once and needs no less.
bool anyWay(const Job& job, const Setting& setting, const std::vector<PlacedPoint>& points);

/// The least passes of any way by the size of the tables alone: a field each of which covers no
/// more than the largest table.
int leastByArea(const Job& job, const Setting& setting);

} // namespace bastewright::testing
