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

/// The three demos, one told by the blocks, one with a leftover cut in two, and thirty random
/// sessions.
std::vector<SessionToPlan> sessionsToPlan();

} // namespace bastewright::testing
