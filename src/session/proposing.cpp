#include "session/private/proposing.h"

#include "session/pins.h"

#include <algorithm>

namespace bastewright {

void hand(Session& session, int job, const std::string& zone, const std::string& person) {
    auto& handed = session.jobs[static_cast<std::size_t>(job)].handed;
    std::erase_if(handed, [&zone](const HandedZone& h) { return h.zone == zone; });
    if (!person.empty())
        handed.push_back({zone, person});
}

Sentence newTrouble(const Plan& before, const Plan& after) {
    for (const auto& f : after.findings)
        if (isAboutPeople(f) && f.level >= Finding::Level::warn &&
            std::ranges::find(before.findings, f) == before.findings.end())
            return f.text;
    return {};
}

Sentence notOffered(const Finding& fault) {
    return core::says("The new plan is not offered, because it breaks a rule: %1", fault.text);
}

WhatIsLeft whatIsLeftBy(const Plan& plan, const Setting& setting, const LiveState& state) {
    WhatIsLeft out;
    for (std::size_t q = 0; q < plan.quilts.size(); ++q) {
        const int job = static_cast<int>(q);
        for (const Pass& p : plan.quilts[q].passes)
            if (!p.pulled && p.number >= state.currentPass[q] &&
                !state.released.contains({job, p.number}))
                ++out.passes;
        for (const Zone& z : plan.quilts[q].zones) {
            const auto at = state.zones.find({job, z.id});
            if (!z.points.empty() && at != state.zones.end() && !at->second.done() &&
                !state.setAside.contains({job, z.id}))
                ++out.zones;
        }
    }
    out.pins = countPins(plan, setting, state).toPlace;
    return out;
}

} // namespace bastewright
