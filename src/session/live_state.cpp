#include "session/live_state.h"

#include "session/effective.h"
#include "session/private/fold.h"
#include "session/ticks.h"

#include <algorithm>

namespace bastewright {

LiveState fold(const Plan& plan, const Setting& setting, std::span<const Event> events) {
    return foldAll(borrowed(plan), setting, events).take();
}

Plan planInForce(const Plan& plan, std::span<const Event> events) {
    return *foldAll(borrowed(plan), {}, events).plan();
}

Session sessionInForce(const Session& session, const Plan& plan, std::span<const Event> events) {
    const auto last = foldAll(borrowed(plan), session.setting, events).session();
    return last ? *last : session;
}

double progress(const LiveState& state) {
    if (state.zones.empty())
        return 1;
    const auto done =
        std::ranges::count_if(state.zones, [](const auto& z) { return z.second.done(); });
    return double(done) / double(state.zones.size());
}

std::optional<Tick> nextTick(const PlanIndex& index, const LiveState& state, int job,
                             const std::string& zone) {
    const auto live = state.zones.find({job, zone});
    if (live == state.zones.end() || !state.started || state.ended ||
        state.setAside.contains({job, zone}))
        return {};
    const Zone* z = index.zone(job, zone);
    if (!z)
        return {};
    if (live->second.state == ZoneState::closed)
        return index.ticked(job, zone, Tick::pressed).empty() ? std::nullopt
                                                              : std::optional{Tick::pressed};
    if (z->pass != state.currentPass[static_cast<std::size_t>(job)] ||
        state.released.contains({job, z->pass}))
        return {};
    switch (live->second.state) {
    case ZoneState::waiting:
        return firstTick(index.way(job, *z));
    case ZoneState::dotted:
        return Tick::opened;
    case ZoneState::open:
        return Tick::closed;
    default:
        return {};
    }
}

std::optional<Tick> nextTick(const Plan& plan, const LiveState& state, int job,
                             const std::string& zone) {
    return nextTick(PlanIndex{plan}, state, job, zone);
}

bool mayStart(const Task& task, const LiveState& state) {
    return std::ranges::all_of(
        task.after, [&state](const std::string& id) { return state.doneTasks.contains(id); });
}

Sentences releaseBlockedBy(const Plan& plan, const LiveState& state, int job, int pass) {
    return releaseBlockedBy(PlanIndex{plan}, state, job, pass);
}

} // namespace bastewright
