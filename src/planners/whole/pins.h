#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <functional>

namespace bastewright {

/// Pins that the quilts of a session take out of the box.
std::int64_t pinsTaken(const Session& session, const std::vector<QuiltPlan>& quilts);

/// Pins short: what stands in, and in which zones; and, where that does not do, what speaks against
/// it. Of the zones that count: all of a plan, or those that wait when the rest is planned. `have`:
/// pins in the box.
Findings adviceOnStandIns(const Session& session, const std::vector<QuiltPlan>& quilts,
                          std::int64_t have,
                          const std::function<bool(int quilt, const Zone&)>& counts);

/// The spacing, up to the next eighth of an inch, at which `have` pins do instead of `taken`, which
/// are `spacing` apart: pins per area go with its square. Both numbers are above 0.
Length spacingFor(Length spacing, std::int64_t taken, std::int64_t have);

} // namespace bastewright
