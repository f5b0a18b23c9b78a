#pragma once

#include "planners/crew/problem.h"

/// Proven lower bounds of the finishing time (docs/computation/crew.md, "Bound"). All of them leave
/// standing room along edges out except for how many people fit, and know people's hours.
namespace bastewright::crew {

struct BoundOptions {
    /// Branches the exact stage bounds may look at, all together.
    int branches = 300'000;
};

/// No schedule in which nobody stays beyond their hours finishes before this; kNever where the
/// hours provably cannot hold the work.
int lowerBound(const Problem& problem, const BoundOptions& options = {});

} // namespace bastewright::crew
