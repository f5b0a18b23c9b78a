#include "session/private/in_hand.h"

#include "job/job_json.h"
#include "plan/call.h"

#include <algorithm>
#include <set>

namespace bastewright {

double paceWith(const Helper& helper, const ReplanOptions& options) {
    const auto learnt = options.pace.find(helper.name);
    if (learnt == options.pace.end())
        return helper.pace;
    return std::clamp(helper.pace * learnt->second, limits::kSlowestPace, limits::kFastestPace);
}

std::vector<const Task*> tasksInHand(const Plan& plan, const LiveState& state) {
    std::vector<const Task*> out;
    std::set<std::string_view> busy;
    for (const auto& t : plan.tasks) {
        if (state.doneTasks.contains(t.id))
            continue;
        const bool next = std::ranges::all_of(t.people, [&](const std::string& who) {
            return state.present.contains(who) && !busy.contains(who);
        });
        busy.insert(t.people.begin(), t.people.end());
        if (next && mayStart(t, state) && (!t.people.empty() || isWaiting(t.kind)))
            out.push_back(&t);
    }
    return out;
}

} // namespace bastewright
