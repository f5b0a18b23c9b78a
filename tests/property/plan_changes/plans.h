#pragma once

#include "plan/plan.h"

#include <functional>
#include <string>
#include <vector>

namespace bastewright::testing {

/// A session with a plan of it, and what it is called.
struct PlannedSession {
    std::string name;
    Session session;
    Plan plan;
};

/// What makes a planned session; made one at a time, for they are large.
struct SessionToPlan {
    std::string name;
    std::function<PlannedSession()> make;
    bool quick = false; ///< planned in a moment
};

/// The three demos, what random sessions show of rooms, people, boxes and hours, and re-plans: at
/// least thirty, each of them with pins or dots, on tables, the floor or at walls, from packs,
/// rolls and leftovers, of one or several quilts.
std::vector<SessionToPlan> sessionsToPlan();

} // namespace bastewright::testing
