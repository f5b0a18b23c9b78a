#pragma once

#include "planners/crew/crew.h"

#include <string>
#include <vector>

namespace bastewright::made {

/// Every rule of docs/computation/crew.md that a plan breaks, one line each, found by brute force
/// from the plan alone: nothing of the planner's code is used.
std::vector<std::string> brokenRules(const Session& session, const std::vector<QuiltPlan>& quilts,
                                     const CrewPlan& plan);

} // namespace bastewright::made
