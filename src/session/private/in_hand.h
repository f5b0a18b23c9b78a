#pragma once

#include "session/live_state.h"
#include "session/replan.h"

namespace bastewright {

/// The tasks that may be in hand: all their people are at the table and have nothing before it, and
/// everything it waits for is done; cooling has no people to wait for.
std::vector<const Task*> tasksInHand(const Plan& plan, const LiveState& state);

/// Somebody's pace with what was learnt of it, within what a file may hold.
double paceWith(const Helper& helper, const ReplanOptions& options);

} // namespace bastewright
