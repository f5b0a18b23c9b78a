#include "checker/rest/rest_view.h"
#include "checker/rules/stand_ins_asked.h"
#include "checker/ways/seen_way.h"

#include <algorithm>

namespace bastewright::check {

// Pins that are missing are said to be, and how many; zones left for another day leave no more than
// there are.
void restPins(const RestView& v, Report& report) {
    const std::int64_t asked = v.pinsToPlace(), there = std::max<std::int64_t>(0, v.facts.pins),
                       missing = std::max<std::int64_t>(0, asked - there);
    const auto& findings = v.plan.plan.findings;
    const auto said = std::ranges::find(findings, Finding::Kind::pinsShort, &Finding::kind);
    if (v.endsWithPins()) {
        std::int64_t today = 0;
        for (const QuiltView& q : v.plan.quilts)
            for (const Zone& z : q.quilt.zones)
                if (seenWay(q.job, z).fromBox && v.waits(q.index, z) &&
                    std::ranges::any_of(v.plan.plan.tasks, [&](const Task& t) {
                        return t.job == q.index && t.zone == z.id;
                    }))
                    today += std::ssize(z.points);
        if (today > there)
            report.add(Pointer{} / "tasks", "Today's zones take " + std::to_string(today) +
                                                " pins; " + std::to_string(v.facts.pins) +
                                                " are in the box.");
        if (missing == 0)
            report.add(Pointer{} / "findings",
                       "Zones are left for another day, and no pins are missing.");
        return;
    }
    // Before anything is done nothing need be said where nobody has told how many there are.
    if (said == findings.end() && v.plan.session.setting.stash.pins == 0 && v.facts.done.empty())
        return;
    if (said == findings.end() ? missing > 0
                               : said->figures != std::vector{static_cast<int>(missing)})
        report.add(said == findings.end() ? Pointer{} / "findings"
                                          : where(v.plan, *said) / "figures",
                   "The zones that wait take " + std::to_string(asked) + " pins, and " +
                       std::to_string(v.facts.pins) + " are in the box; the plan says otherwise.");
}

// Of passes that may still be basted otherwise: as few get dots as let the pins in the box last.
void restWith(const RestView& v, Report& report) {
    if (v.plan.session.setting.stash.pins == 0 && v.facts.pins <= 0) // nobody has said how many
        return;
    standInsAsked(v.plan,
                  {.have = std::max<std::int64_t>(0, v.facts.pins),
                   .pinned = v.pinsToPlace(),
                   .open = [&](int quilt, int pass) { return v.mayBeBastedOtherwise(quilt, pass); },
                   .counts = [&](int quilt, const Zone& z) { return v.waits(quilt, z); }},
                  report);
}

} // namespace bastewright::check
