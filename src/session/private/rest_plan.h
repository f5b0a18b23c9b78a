#pragma once

#include "planners/crew/crew.h"
#include "session/private/plan_index.h"
#include "session/replan.h"

#include <map>
#include <set>
#include <string>
#include <utility>

namespace bastewright {

/// The tasks that are done, their times cut to end by now.
std::vector<Task> doneBy(Seconds now, const Plan& plan, const std::set<std::string>& done);

/// The state as the fold has it once this plan is taken: its zones, those that are new waiting.
LiveState asSeenBy(const Plan& plan, LiveState state);

/// The zones that are begun, and how many of their steps are done.
std::map<std::pair<int, std::string>, int> begunZones(const Session& session, const Plan& plan,
                                                      const LiveState& state);

/// Nothing of the zone is done, and it is not left out.
bool waits(const LiveState& state, const std::pair<int, std::string>& zone);

/// Pins in the box for what is left (`Situation::pins`); nothing where nobody has said how many
/// there are.
std::optional<std::int64_t> pinsForRest(const Session& session, const Plan& plan,
                                        const LiveState& state);

/// Something of the pass is done: it lies on the table. What is left out is not done.
bool isStepped(const Plan& plan, const LiveState& state, int job, int pass);

/// What is not finished of the plan stands on tables that are not in the room any more.
bool standsOnMissing(const Plan& plan, const Room& room, const LiveState& state);

/// A plan of what is kept and what the crew planner made of the rest: tasks, breaks, what is found
/// about people, pins and tables, the finish. `base` has the quilts, and what was found about them.
Plan putTogether(Plan base, std::vector<Task> kept, const CrewPlan& crew, const Session& session,
                 const LiveState& state, Seconds now);

} // namespace bastewright
