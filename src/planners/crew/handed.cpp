#include "planners/crew/handed.h"

#include "plan/find.h"
#include "planners/crew/words.h"

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

std::string whyNot(const Helper& helper, const QuiltPlan& quilt, const Zone& zone,
                   std::span<const TaskKind> work, Unit unit) {
    const auto includes = [&](TaskKind kind) {
        return std::ranges::find(work, kind) != work.end();
    };
    if (zone.points.empty())
        return words({"There is nothing to do at zone ", zone.id, "."});
    if (includes(TaskKind::closePins) && !helper.closes)
        return words({helper.name, " does not close pins, and zone ", zone.id, " has to be closed."});
    if (includes(TaskKind::press) && !helper.irons)
        return words({helper.name, " does not iron, and zone ", zone.id, " has to be pressed."});
    const Pass* pass = findPass(quilt, zone.pass);
    if (pass == nullptr)
        return words({"Zone ", zone.id, " belongs to no pass."});
    const SurfacePlan& s = quilt.surface;
    const Rect box = workBox(zone);
    if (!sidesFor(box, pass->table, s, helper).empty())
        return {};
    if (!sidesFor(box, pass->table, s.closed, helper.reach, !s.floor).empty())
        return words({helper.name, " keeps to one side of the table and does not reach all of zone ",
                      zone.id, " from there."});
    std::string out = words({helper.name, " does not reach all of zone ", zone.id,
                             " from an open side: their reach is ", format(helper.reach, unit)});
    // Rounded up to an eighth, so that the figure told does.
    if (const auto least = leastReach(box, pass->table, s.closed))
        out += words({", it takes ", format(*least + Length::inch64ths(7), unit)});
    return out + ".";
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
            std::string why;
            if (!zone)
                why = words({"Zone ", wish.zone, " of ", job.name, " was handed to ", wish.person,
                             ", and this plan has no such zone."});
            else if (who == helpers.end())
                why = words({"Zone ", wish.zone, " of ", job.name, " was handed to ", wish.person,
                             ", who is not among the helpers."});
            else
                why = whyNot(*who, quilts[k], *zone, work, job.unit);
            if (!why.empty())
                findings.push_back({Finding::Level::warn, "/handed", std::move(why),
                                    "Hand it to somebody else; until then anybody who can works "
                                    "it."});
        }
    }
}

} // namespace bastewright::crew
