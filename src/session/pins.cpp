#include "session/pins.h"

#include "session/private/plan_index.h"

#include <algorithm>

namespace bastewright {

std::int64_t pinsLeft(const Setting& setting, const LiveState& state) {
    const auto box = std::max<std::int64_t>(0, setting.stash.pins + state.pinsFound);
    return box - state.pinsLost - state.pinsOut + state.pinsBack;
}

namespace {

template <class FromBox>
PinCount counted(const Plan& plan, const Setting& setting, const LiveState& state,
                 const FromBox& fromBox) {
    const PlanIndex index{plan};
    PinCount out;
    out.box = std::max<std::int64_t>(0, setting.stash.pins + state.pinsFound);
    out.back = state.pinsBack;
    for (const auto& [key, live] : state.zones) {
        const Zone* zone = index.zone(key.first, key.second);
        if (!zone || !fromBox(index, key.first, *zone) || state.setAside.contains(key))
            continue;
        const auto pins = static_cast<std::int64_t>(zone->points.size());
        if (live.state == ZoneState::waiting) {
            out.toPlace += pins;
        } else {
            out.out += pins;
            out.perZone.emplace(key, pins);
        }
    }
    out.left = out.box - state.pinsLost - out.out + out.back;
    out.missing = state.pinsLost;
    if (state.pinsCounted)
        out.missing += out.stillOut();
    return out;
}

} // namespace

PinCount countPins(const Plan& plan, const Setting& setting, const LiveState& state) {
    return counted(plan, setting, state, [](const PlanIndex& index, int job, const Zone& zone) {
        return index.way(job, zone).fromBox;
    });
}

PinCount countPins(const Plan& plan, const Session& session, const LiveState& state) {
    return counted(plan, session.setting, state,
                   [&](const PlanIndex& index, int job, const Zone& zone) {
                       const auto q = static_cast<std::size_t>(job);
                       const Way& way = q < session.jobs.size() ? wayOf(session.jobs[q], zone)
                                                                : index.way(job, zone);
                       return way.fromBox;
                   });
}

Sentence missingPinsNotice(const PinCount& pins) {
    if (pins.missing <= 0)
        return {};
    const Sentence how = core::says(
        "Run a flat palm lightly over both faces of the quilt, look into its folds, under the "
        "tables "
        "and in clothes, then sweep the floor with a magnet. A magnet is not for anybody with a "
        "pacemaker or another medical implant, and is kept away from phones and cards. Check the "
        "quilt again before it goes under a needle.");
    if (pins.missing == 1)
        return core::says(
            "One pin is missing. Look before anybody sits down or walks barefoot, and "
            "keep children and pets out until it is found. %1",
            how);
    return core::says("%1 pins are missing. Look before anybody sits down or walks barefoot, and "
                      "keep children and pets out until they are found. %2",
                      pins.missing, how);
}

} // namespace bastewright
