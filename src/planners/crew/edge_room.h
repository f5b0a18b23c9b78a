#pragma once

#include "planners/crew/problem.h"

#include <span>
#include <vector>

namespace bastewright::crew {

/// How early a set of activities can have ended for want of standing room alone: every edge holds
/// so many people side by side, whoever they are, and each place is as good as the fastest person.
/// Sides are looked at together and in every choice of some of them, for the work that can be done
/// from nowhere else. `branches` is counted down; never below `atLeast`.
int endByEdges(const Problem& problem, std::span<const int> activities,
               std::span<const int> release, int atLeast, int& branches);

} // namespace bastewright::crew
