#pragma once

#include "plan/plan.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace bastewright {

/// What is known of a session that is under way when the rest of it is planned: facts, none of them
/// a planner's.
struct Underway {
    const Plan* before = nullptr; ///< in force until now
    Seconds now{};                ///< since the session's start
    std::set<std::string> done{}; ///< ids of the tasks that are finished or left out
    /// (quilt, zone) of which something is done, and how many of its steps: also where the plan in
    /// force has no task for them.
    std::map<std::pair<int, std::string>, int> begun{};
    std::set<std::pair<int, std::string>> setAside{}; ///< (quilt, zone) left out for good
    std::set<std::string> present{};                  ///< people at the table
    std::int64_t pins = 0;                            ///< in the box
};

/// The same for a plan that is to take over in the middle of a session: what is done must be in it
/// as it was, and what is left must keep the rules from now on, with those who are there, on the
/// tables that are there, with the pins that are left (docs/computation/checker.md, 'A session
/// under way'). What the plan in force breaks in the same way is not held against it.
Findings checkRest(const Session& session, const Plan& plan, const Underway& facts);

} // namespace bastewright
