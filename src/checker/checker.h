#pragma once

#include "plan/plan.h"

namespace bastewright {

/// Looks for anything wrong with a plan, by brute force and without any planner's code: see the
/// list of rules in docs/computation/checker.md. Empty for a good plan. Each violation is one
/// finding of level stop whose `field` is the rule's name (for example "points.coverage") and whose
/// text names the quilt, pass, zone, task or person and the figures.
///
/// A plan whose own findings hold a stop is checked for what it claims to have planned.
Findings checkPlan(const Session& session, const Plan& plan);

} // namespace bastewright
