#pragma once

#include "session/replan.h"

#include <string>
#include <vector>

namespace bastewright::made {

/// Everything a re-plan must keep or respect and does not, one line each, found from the plans
/// alone and by brute force: finished work, ids, order, people's time and hours, irons, reach,
/// standing room. Nothing of the planner's code is used.
std::vector<std::string> brokenByReplan(const Session& session, const Plan& before,
                                        const Plan& after, const LiveState& state,
                                        const ReplanOptions& options);

/// The tasks that were being worked on at that moment, where everything went to plan: begun, all
/// their people at the table, and nothing of theirs or that they wait for still open.
std::vector<const Task*> workedOn(const Plan& before, const LiveState& state, Seconds now);

} // namespace bastewright::made
