#include "planners/crew/handed.h"

#include "plan/find.h"
#include "plan/quilt_name.h"

#include <algorithm>
#include <array>

namespace bastewright::crew {
namespace {

/// The place of whoever a zone of a quilt was handed to among the helpers; -1 for nobody there.
int handedTo(const Job& job, const std::vector<Helper>& helpers, const std::string& zone) {
    const auto wish = std::ranges::find(job.handed, zone, &HandedZone::zone);
    if (wish == job.handed.end())
        return -1;
    const auto who = std::ranges::find(helpers, wish->person, &Helper::name);
    return who == helpers.end() ? -1 : static_cast<int>(who - helpers.begin());
}

} // namespace

std::vector<TaskKind> zoneWorkOf(const Job& job) {
    if (job.basting.with == Basting::With::dots)
        return {TaskKind::dotLower, TaskKind::dotUpper, TaskKind::press};
    return {TaskKind::placeOpen, TaskKind::closePins};
}

Sentence whyNot(const Helper& helper, const QuiltPlan& quilt, const Zone& zone,
                std::span<const TaskKind> work, Unit unit) {
    const auto includes = [&](TaskKind kind) {
        return std::ranges::find(work, kind) != work.end();
    };
    if (zone.points.empty())
        return core::says("There is nothing to do at zone %1.", zone.id);
    if (includes(TaskKind::closePins) && !helper.closes)
        return core::says("%1 does not close pins, and zone %2 has to be closed.", helper.name, zone.id);
    if (includes(TaskKind::press) && !helper.irons)
        return core::says("%1 does not iron, and zone %2 has to be pressed.", helper.name, zone.id);
    const Pass* pass = findPass(quilt, zone.pass);
    if (pass == nullptr)
        return core::says("Zone %1 belongs to no pass.", zone.id);
    const SurfacePlan& s = quilt.surface;
    const Rect box = workBox(zone);
    if (!sidesFor(box, pass->table, s, helper).empty())
        return {};
    if (!sidesFor(box, pass->table, s.closed, helper.reach, !s.floor).empty())
        return core::says("%1 keeps to one side of the table and does not reach all of zone %2 from "
                          "there.",
                          helper.name, zone.id);
    const Sentence reach = core::length(helper.reach, unit);
    // Rounded up to an eighth, so that the figure told does.
    if (const auto least = leastReach(box, pass->table, s.closed))
        return core::says("%1 does not reach all of zone %2 from an open side: their reach is %3, it "
                          "takes %4.",
                          helper.name, zone.id, reach,
                          core::length(*least + Length::inch64ths(7), unit));
    return core::says("%1 does not reach all of zone %2 from an open side: their reach is %3.",
                      helper.name, zone.id, reach);
}

void honourHanded(const Session& session, const std::vector<Helper>& helpers,
                  const std::vector<QuiltPlan>& quilts, const Drafts& drafts, Model& model) {
    for (std::size_t i = 0; i < drafts.tasks.size(); ++i) {
        const TaskDraft& d = drafts.tasks[i];
        Activity& a = model.problem.activities[i];
        const auto job = static_cast<std::size_t>(d.job);
        if (d.zone < 0 || a.team != 1 || job >= session.jobs.size())
            continue;
        const int who = handedTo(session.jobs[job], helpers,
                                 quilts[job].zones[static_cast<std::size_t>(d.zone)].id);
        const auto mode = std::ranges::find(a.modes, who, &Mode::person);
        if (who >= 0 && mode != a.modes.end())
            a.modes = {Mode{*mode}};
    }
}

void sayHanded(const Session& session, const std::vector<Helper>& helpers,
               const std::vector<QuiltPlan>& quilts, Findings& findings) {
    for (std::size_t k = 0; k < quilts.size() && k < session.jobs.size(); ++k) {
        const Job& job = session.jobs[k];
        const auto work = zoneWorkOf(job);
        for (const HandedZone& wish : job.handed) {
            const Zone* zone = findZone(quilts[k], wish.zone);
            const auto who = std::ranges::find(helpers, wish.person, &Helper::name);
            Sentence why;
            if (!zone)
                why = core::says("Zone %1 of %2 was handed to %3, and this plan has no such zone.",
                                 wish.zone, quiltName(job.name), wish.person);
            else if (who == helpers.end())
                why = core::says("Zone %1 of %2 was handed to %3, who is not among the helpers.",
                                 wish.zone, quiltName(job.name), wish.person);
            else
                why = whyNot(*who, quilts[k], *zone, work, job.unit);
            if (!why.empty())
                findings.push_back({Finding::Level::warn, "/handed", std::move(why),
                                    core::says("Hand it to somebody else; until then anybody who "
                                               "can works it.")});
        }
    }
}

} // namespace bastewright::crew
