#pragma once

#include "plan/plan.h"

#include <stop_token>

namespace bastewright {

struct CrewOptions {
    int effort = 1; ///< scales the number of schedules tried
    bool sharing = true; ///< two people may share a zone where that ends a wait
};

struct CrewPlan {
    std::vector<Task> tasks; ///< by start, then id
    Seconds finish{};
    Seconds bound{};   ///< proven lower bound of the finish
    Findings findings; ///< a zone nobody can reach, hours too short, nobody may iron, …
};

/// Who does what, when: builds the tasks of all quilts' passes (docs/computation/crew.md) and gives
/// them people, places and times. `quilts` have their surface, passes, zones and points; quilts
/// with the same surface number follow one another in order, others run side by side. Where hours
/// are too short the plan runs past them and a finding of level stop says by how much. Pure and
/// deterministic.
CrewPlan planCrew(const Session& session, const std::vector<QuiltPlan>& quilts,
                  const CrewOptions& options = {}, std::stop_token stop = {});

} // namespace bastewright
