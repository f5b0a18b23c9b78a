#pragma once

#include "planners/whole/whole.h"
#include "session/live_state.h"

namespace bastewright {

/// The only way a plan reaches a person: planned, then verified by the independent checker. What
/// the checker finds is added to the plan's findings as stops, so that a plan that fails is never
/// shown as good.
Plan checkedPlan(const Session& session, const WholeOptions& options = {},
                 std::stop_token stop = {});

/// What the independent checker finds wrong with a plan that is to take over from `before` now,
/// while the session stands as `state` says; empty where it may be offered.
Findings faultsOfRest(const Session& session, const Plan& plan, const Plan& before,
                      const LiveState& state, Seconds now);

/// True where nothing stands against starting.
bool isGood(const Plan& plan);

} // namespace bastewright
