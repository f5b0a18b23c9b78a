#include "planners/crew/handed.h"

#include "plan/find.h"
#include "plan/quilt_name.h"
#include "planners/crew/reaching.h"
#include "planners/surface/closed_sides.h"
#include "ways/way.h"

#include <algorithm>
#include <array>

namespace bastewright::crew {

Sentence whyNot(const Helper& helper, const QuiltPlan& quilt, const Zone& zone,
                std::span<const TaskKind> work, Unit unit) {
    const auto includes = [&](TaskKind kind) {
        return std::ranges::find(work, kind) != work.end();
    };
    const std::string name{zoneName(zone.id)};
    if (zone.points.empty())
        return core::says("There is nothing to do at zone %1.", name);
    if (includes(TaskKind::closePins) && !helper.closes)
        return core::says("%1 does not close pins, and zone %2 has to be closed.", helper.name,
                          name);
    if (includes(TaskKind::press) && !helper.irons)
        return core::says("%1 does not iron, and zone %2 has to be pressed.", helper.name, name);
    const Pass* pass = findPass(quilt, zone.pass);
    if (pass == nullptr)
        return core::says("Zone %1 belongs to no pass.", name);
    const SurfacePlan& s = quilt.surface;
    const auto open = openSides(pass->table, s.closed);
    std::vector<StandingPlace> kept = open;
    if (helper.side) {
        const std::array wish{*helper.side};
        const Side side = closedSides(wish, s.quiltLengthAlongLength).front();
        std::erase_if(kept, [&](const StandingPlace& p) { return p.side != side; });
    }
    const auto own = std::ranges::find(pass->stretches, helper.name, &Stretch::person);
    if (helper.seated && own != pass->stretches.end()) {
        if (zonePlace(zone.id) == own->place ||
            bestPlace(helper, pass->table, own->edges, zone.points, !s.floor))
            return {};
        return core::says("%1 works sitting and does not reach all of zone %2 from there.",
                          helper.name, name);
    }
    if (bestPlace(helper, pass->table, kept, zone.points, !s.floor))
        return {};
    if (bestPlace(helper, pass->table, open, zone.points, !s.floor))
        return core::says(
            "%1 keeps to one side of the table and does not reach all of zone %2 from "
            "there.",
            helper.name, name);
    return core::says("%1 does not reach all of zone %2 from an open side: their reach is %3.",
                      helper.name, name, core::length(helper.reach, unit));
}

namespace {

/// Where a wish stands in the file.
std::string placeOf(const Session& session, std::size_t job, const HandedZone& wish) {
    const auto at = &wish - session.jobs[job].handed.data();
    return (session.severalQuilts ? "/jobs/" + std::to_string(job) : std::string{}) + "/handed/" +
           std::to_string(at);
}

} // namespace

void sayHanded(const Session& session, const std::vector<Helper>& helpers,
               const std::vector<QuiltPlan>& quilts, std::span<const Task> tasks,
               Findings& findings) {
    for (std::size_t k = 0; k < quilts.size() && k < session.jobs.size(); ++k) {
        const Job& job = session.jobs[k];
        for (const HandedZone& wish : job.handed) {
            const std::string name{zoneName(wish.zone)};
            const Zone* zone = findZone(quilts[k], wish.zone);
            const auto who = std::ranges::find(helpers, wish.person, &Helper::name);
            Sentence why;
            if (!zone)
                why = core::says("Zone %1 of %2 was handed to %3, and this plan has no such zone.",
                                 name, quiltName(job.name), wish.person);
            else if (who == helpers.end())
                why = core::says("Zone %1 of %2 was handed to %3, who is not among the helpers.",
                                 name, quiltName(job.name), wish.person);
            else if (std::ranges::any_of(tasks, [&](const Task& t) {
                         return t.job == static_cast<int>(k) && t.zone == wish.zone &&
                                std::ranges::find(t.people, wish.person) == t.people.end();
                     })) {
                why = whyNot(*who, quilts[k], *zone, wayOf(job, *zone).zoneWork(), job.unit);
                if (why.empty())
                    why = core::says("Zone %1 of %2 was handed to %3, who is not there for it or "
                                     "would stand in somebody's way.",
                                     name, quiltName(job.name), wish.person);
            }
            if (!why.empty())
                findings.push_back({Finding::Kind::handedElsewhere, Finding::Level::warn,
                                    placeOf(session, k, wish), std::move(why),
                                    core::says("Hand it to somebody else; until then anybody who "
                                               "can works it."),
                                    wish.person});
        }
    }
}

} // namespace bastewright::crew
