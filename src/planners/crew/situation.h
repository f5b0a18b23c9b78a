#pragma once

#include "plan/plan.h"

#include <map>
#include <optional>
#include <set>
#include <string>

namespace bastewright {

/// What is known when the rest of a session is planned. Before it begins: nothing of it.
struct Situation {
    Seconds now{};                ///< nothing begins before it
    const Plan* before = nullptr; ///< the plan in force: its zones, hands and places
    std::set<std::string> done{}; ///< ids of finished tasks
    /// Seconds already spent on the tasks in hand, by their ids.
    std::map<std::string, Seconds> inHand{};
    /// (quilt, zone) that is begun: how many of its steps are done, also where the plan in force
    /// has no task for them.
    std::map<std::pair<int, std::string>, int> begun{};
    std::set<std::pair<int, std::string>> setAside{}; ///< (quilt, zone) left out for good
    /// (quilt, number of a pass) that is finished first, as it is planned already: nothing is added
    /// to it.
    std::set<std::pair<int, int>> finished{};
    std::optional<std::set<std::string>>
        present{}; ///< who is at the table; nothing: by their hours
    /// When they were; `now` unless something is finished first that is planned already.
    std::optional<Seconds> presentAt{};
    Seconds lastRest{}; ///< when the last break ended
    /// In the box now; nothing: as many as the session says.
    std::optional<std::int64_t> pins{};
};

} // namespace bastewright
