#include "session/private/plan_index.h"
#include "session/private/words.h"
#include "session/replan.h"
#include "ways/way.h"

#include <algorithm>

namespace bastewright {
namespace {

// A change of the finish below this is not worth a sentence.
constexpr Seconds kNotable{60};

std::vector<std::string> without(const std::vector<std::string>& all,
                                 const std::vector<std::string>& those) {
    std::vector<std::string> out;
    for (const auto& who : all)
        if (std::ranges::find(those, who) == those.end())
            out.push_back(who);
    return out;
}

/// Who comes to zones, and who leaves them.
struct Hands {
    std::vector<std::string> came, left;
    TaskKind work; ///< of zones, both faces of dots alike
    bool operator==(const Hands&) const = default;
};

Sentence ofZones(const Hands& hands, const std::vector<std::string>& zones) {
    const Sentence came = core::listed(hands.came, hands.came.size());
    const Sentence left = core::listed(hands.left, hands.left.size());
    const Sentence work =
        zoneStepWords(hands.work).work(core::listed(zones, zones.size()), zones.size() == 1);
    if (hands.came.empty())
        return zones.size() == 1 ? core::says("Nobody has %1, which was with %2.", work, left)
                                 : core::says("Nobody has %1, which were with %2.", work, left);
    if (hands.left.empty())
        return hands.came.size() == 1 ? core::says("%1 takes over %2.", came, work)
                                      : core::says("%1 take over %2.", came, work);
    return hands.came.size() == 1 ? core::says("%1 takes over %2 from %3.", came, work, left)
                                  : core::says("%1 take over %2 from %3.", came, work, left);
}

Sentence ofStep(const Task& t, const std::vector<std::string>& came,
                const std::vector<std::string>& left) {
    const Sentence step = t.kind == TaskKind::shift
                              ? core::says("%1 into pass %2", spoken(t.kind), t.pass)
                              : core::says("%1 of pass %2", spoken(t.kind), t.pass);
    const Sentence who = core::listed(came, came.size()), others = core::listed(left, left.size());
    if (came.empty())
        return left.size() == 1 ? core::says("%1 is no longer in %2.", others, step)
                                : core::says("%1 are no longer in %2.", others, step);
    if (left.empty())
        return came.size() == 1 ? core::says("%1 is now in %2.", who, step)
                                : core::says("%1 are now in %2.", who, step);
    return came.size() == 1 ? core::says("%1 is now in %2 instead of %3.", who, step, others)
                            : core::says("%1 are now in %2 instead of %3.", who, step, others);
}

} // namespace

Sentences whatChanged(const Plan& before, const Plan& after, const LiveState& state) {
    const PlanIndex old{before};
    // Zones in one sentence for each pair of hands.
    std::vector<std::pair<Hands, std::vector<std::string>>> zones;
    Sentences out;
    for (const auto& t : after.tasks) {
        const Task* was = old.task(t.id);
        if (!was || state.doneTasks.contains(t.id))
            continue;
        const auto came = without(t.people, was->people), left = without(was->people, t.people);
        if (came.empty() && left.empty())
            continue;
        if (isZoneWork(t.kind)) {
            const Hands hands{came, left,
                              t.kind == TaskKind::dotUpper ? TaskKind::dotLower : t.kind};
            auto it = std::ranges::find(zones, hands, [](const auto& z) { return z.first; });
            if (it == zones.end())
                it = zones.insert(zones.end(), {hands, {}});
            if (const std::string zone{zoneName(t.zone)};
                std::ranges::find(it->second, zone) == it->second.end())
                it->second.push_back(zone);
            continue;
        }
        out.push_back(ofStep(t, came, left));
    }
    Sentences handsChanged;
    for (const auto& [hands, ids] : zones)
        handsChanged.push_back(ofZones(hands, ids));
    out.insert(out.begin(), handsChanged.begin(), handsChanged.end());

    const auto later = after.finish - before.finish;
    if (later >= kNotable || later <= -kNotable)
        out.push_back(later < Seconds{}
                          ? core::says("The work is planned to end %1 earlier.", -later)
                          : core::says("The work is planned to end %1 later.", later));
    for (const auto& f : after.findings)
        if (std::ranges::find(before.findings, f) == before.findings.end())
            out.push_back(f.text);
    return out;
}

} // namespace bastewright
