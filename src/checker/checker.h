#pragma once

#include "plan/plan.h"

#include <string_view>

namespace bastewright {

/// Looks for anything wrong with a plan, by brute force and without any planner's code: see the
/// list of rules in docs/computation/checker.md. Empty for a good plan. Each violation is one
/// finding of level stop whose `subject` is the rule's name (for example "points.coverage"), whose
/// `field` is a JSON pointer into the plan's file, and whose text names the quilt, pass, zone, task
/// or person and the figures.
///
/// A plan whose own findings hold a stop is checked for what it claims to have planned.
Findings checkPlan(const Session& session, const Plan& plan);

/// What must hold by a rule of `checkPlan` or `checkRest`, in plain words, as the end of a
/// sentence; empty where there is no such rule.
std::string_view ruleInWords(std::string_view rule);

} // namespace bastewright
