#pragma once

#include "job/job.h"
#include "plan/plan.h"

namespace bastewright::backing {

/// What makes a backing impossible to plan, whatever the layout: one finding a field, each of level
/// stop.
Findings checkInput(const Backing& rules, Size needed, Unit unit);

} // namespace bastewright::backing
