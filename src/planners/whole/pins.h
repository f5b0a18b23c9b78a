#pragma once

#include "job/job.h"
#include "plan/plan.h"

namespace bastewright {

/// Pins that the quilts of a session take out of the box.
std::int64_t pinsTaken(const Session& session, const std::vector<QuiltPlan>& quilts);

/// The spacing, up to the next eighth of an inch, at which `have` pins do instead of `taken`, which
/// are `spacing` apart: pins per area go with its square. Both numbers are above 0.
Length spacingFor(Length spacing, std::int64_t taken, std::int64_t have);

} // namespace bastewright
