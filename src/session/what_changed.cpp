#include "session/private/plan_index.h"
#include "session/private/words.h"
#include "session/replan.h"

#include <algorithm>
#include <tuple>

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

std::string_view handsOnZone(TaskKind kind) {
    switch (kind) {
    case TaskKind::placeOpen:
        return "placing";
    case TaskKind::closePins:
        return "closing";
    case TaskKind::press:
        return "pressing";
    default:
        return "dotting";
    }
}

} // namespace

std::vector<std::string> whatChanged(const Plan& before, const Plan& after,
                                     const LiveState& state) {
    const PlanIndex old{before};
    // Zones in one sentence for each pair of hands: (new people, old people, kind of work).
    using Hands = std::tuple<std::vector<std::string>, std::vector<std::string>, std::string_view>;
    std::vector<std::pair<Hands, std::vector<std::string>>> zones;
    std::vector<std::string> out;
    for (const auto& t : after.tasks) {
        const Task* was = old.task(t.id);
        if (!was || state.doneTasks.contains(t.id))
            continue;
        const auto came = without(t.people, was->people), left = without(was->people, t.people);
        if (came.empty() && left.empty())
            continue;
        if (isZoneWork(t.kind)) {
            const Hands hands{came, left, handsOnZone(t.kind)};
            auto it = std::ranges::find(zones, hands, [](const auto& z) { return z.first; });
            if (it == zones.end())
                it = zones.insert(zones.end(), {hands, {}});
            it->second.push_back(t.zone);
            continue;
        }
        std::string line = came.empty() ? listed(left, left.size()) : listed(came, came.size());
        line.append(came.empty() ? (left.size() == 1 ? " is" : " are")
                                 : (came.size() == 1 ? " is" : " are"))
            .append(came.empty() ? " no longer in " : " now in ")
            .append(spoken(t.kind))
            .append(t.kind == TaskKind::shift ? " into pass " : " of pass ")
            .append(std::to_string(t.pass));
        if (!came.empty() && !left.empty())
            line.append(" instead of ").append(listed(left, left.size()));
        out.push_back(line.append("."));
    }
    std::vector<std::string> handsChanged;
    for (const auto& [hands, ids] : zones) {
        const auto& [came, left, work] = hands;
        std::string line;
        if (came.empty())
            line.append("Nobody has ").append(work);
        else
            line.append(listed(came, came.size()))
                .append(came.size() == 1 ? " takes" : " take")
                .append(" over ")
                .append(work);
        line.append(ids.size() == 1 ? " of zone " : " of zones ").append(listed(ids, ids.size()));
        if (!left.empty())
            line.append(!came.empty()     ? " from "
                        : ids.size() == 1 ? ", which was with "
                                          : ", which were with ")
                .append(listed(left, left.size()));
        handsChanged.push_back(line.append("."));
    }
    out.insert(out.begin(), handsChanged.begin(), handsChanged.end());

    const auto later = after.finish - before.finish;
    if (later >= kNotable || later <= -kNotable)
        out.push_back(std::string{"The work is planned to end "}
                          .append(formatSpan(later < Seconds{} ? -later : later))
                          .append(later < Seconds{} ? " earlier." : " later."));
    for (const auto& f : after.findings)
        if (std::ranges::find(before.findings, f) == before.findings.end())
            out.push_back(f.text);
    return out;
}

} // namespace bastewright
