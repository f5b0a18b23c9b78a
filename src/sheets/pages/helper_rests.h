#pragma once

#include "plan/plan.h"

#include <string>
#include <vector>

namespace bastewright::sheets {

/// A time in which a person has nothing to do.
struct Rest {
    Seconds from{}, until{}; ///< from the session's start
    bool asked = false;      ///< a break they told of; else a wait the plan leaves them
    auto operator<=>(const Rest&) const = default;
};

/// All of a person's rests by their beginning: every break that begins before the session ends, and
/// every wait of eight minutes or more between two tasks (shorter ones pass by themselves). Breaks
/// and waits do not overlap.
std::vector<Rest> restsOf(const Session& session, const Plan& plan, const std::string& person);

} // namespace bastewright::sheets
