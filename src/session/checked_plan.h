#pragma once

#include "planners/whole/whole.h"

namespace bastewright {

/// The only way a plan reaches a person: planned, then verified by the independent checker. What
/// the checker finds is added to the plan's findings as stops, so that a plan that fails is never
/// shown as good.
Plan checkedPlan(const Session& session, const WholeOptions& options = {},
                 std::stop_token stop = {});

/// True where nothing stands against starting.
bool isGood(const Plan& plan);

} // namespace bastewright
