#include "planners/crew/crew.h"

#include "planners/crew/bound.h"
#include "planners/crew/model.h"
#include "planners/crew/settle.h"
#include "planners/crew/sweep.h"
#include "planners/crew/words.h"

#include <algorithm>

namespace bastewright {
namespace {
using namespace crew;

std::string idOf(const TaskDraft& d, const std::vector<QuiltPlan>& quilts) {
    std::string id = words({"q", std::to_string(d.job + 1), ".p", std::to_string(d.pass), "."});
    if (d.zone >= 0)
        id += quilts[static_cast<std::size_t>(d.job)].zones[static_cast<std::size_t>(d.zone)].id +
              ".";
    id += name(d.kind);
    if (d.wave > 0)
        id += words({".", std::to_string(d.wave)});
    return id;
}

std::vector<Task> tasksOf(const Drafts& drafts, const Model& model, const Schedule& schedule,
                          const std::vector<Helper>& helpers,
                          const std::vector<QuiltPlan>& quilts) {
    std::vector<Task> tasks;
    tasks.reserve(drafts.tasks.size());
    for (std::size_t i = 0; i < drafts.tasks.size(); ++i) {
        const TaskDraft& d = drafts.tasks[i];
        Task t;
        t.id = idOf(d, quilts);
        t.kind = d.kind;
        t.job = d.job;
        t.pass = d.pass;
        if (d.zone >= 0)
            t.zone =
                quilts[static_cast<std::size_t>(d.job)].zones[static_cast<std::size_t>(d.zone)].id;
        for (const int p : schedule.crew[i])
            t.people.push_back(helpers[static_cast<std::size_t>(p)].name);
        if (const int s = schedule.strip[i]; s >= 0) {
            const Length lo = Length::nanometres(schedule.place[i]);
            const auto strip = static_cast<std::size_t>(s);
            t.places.push_back({model.edges[strip].side,
                                {lo, lo + Length::nanometres(model.problem.strips[strip].room)}});
        }
        t.start = Seconds{schedule.start[i]};
        t.end = Seconds{schedule.end[i]};
        for (const int b : d.after)
            t.after.push_back(idOf(drafts.tasks[static_cast<std::size_t>(b)], quilts));
        tasks.push_back(std::move(t));
    }
    std::ranges::sort(tasks, [](const Task& a, const Task& b) {
        return a.start != b.start ? a.start < b.start : a.id < b.id;
    });
    return tasks;
}

/// Who would have to stay, and for how long beyond what they said.
void sayOvertime(const Problem& problem, const Schedule& schedule,
                 const std::vector<Helper>& helpers, ClockTime start, Findings& findings) {
    if (schedule.overtime == 0)
        return;
    std::vector<int> last(helpers.size(), 0);
    for (std::size_t i = 0; i < schedule.crew.size(); ++i)
        for (const int p : schedule.crew[i])
            last[static_cast<std::size_t>(p)] =
                std::max(last[static_cast<std::size_t>(p)], schedule.end[i]);
    std::string who, cure;
    for (std::size_t h = 0; h < helpers.size(); ++h) {
        const int over = last[h] - problem.people[h].until;
        if (over <= 0)
            continue;
        const Seconds toMinute{(last[h] + 59) / 60 * 60};
        who += words({who.empty() ? "" : ", ", helpers[h].name, " by ", formatSpan(Seconds{over})});
        cure += words(
            {cure.empty() ? "" : ", ", helpers[h].name, " until ", format(after(start, toMinute))});
    }
    findings.push_back({Finding::Level::stop, "/helpers",
                        words({"The hours are too short: the work runs past those of ", who, "."}),
                        words({"It works with ", cure, "."})});
}

/// Where somebody stays beyond their hours the bound must not know them.
int boundOf(const Problem& problem, const Schedule& schedule) {
    if (schedule.overtime == 0)
        return lowerBound(problem);
    Problem open = problem;
    for (Person& p : open.people)
        p.until = kNever;
    return lowerBound(open);
}

} // namespace

CrewPlan planCrew(const Session& session, const std::vector<QuiltPlan>& quilts,
                  const CrewOptions& options, std::stop_token stop) {
    CrewPlan plan;
    std::vector<Helper> helpers = session.setting.helpers;
    if (helpers.empty()) {
        helpers.emplace_back().name = "Helper 1";
        plan.findings.push_back({Finding::Level::note, "/helpers",
                                 "No helpers are named: planned for one, 'Helper 1'.",
                                 "Name who comes."});
    } else if (helpers.size() == 1) {
        plan.findings.push_back(
            {Finding::Level::note, "/helpers",
             words({helpers.front().name,
                    " works alone: laying the layers takes longer than planned for two."}),
             "A second pair of hands for laying the layers."});
    }
    const Drafts drafts = draftTasks(session, helpers, quilts);
    plan.findings.insert(plan.findings.end(), drafts.findings.begin(), drafts.findings.end());
    const Model model = modelOf(session, helpers, quilts, drafts);

    const Schedule first = construct(model.problem);
    plan.bound = Seconds{boundOf(model.problem, first)};
    const int schedules = std::max(1, options.effort) *
                          std::clamp(100'000 / std::max(1, model.problem.size()), 40, 1'000);
    Schedule schedule = searchBySweeps(
        model.problem, first,
        {.schedules = schedules, .bound = static_cast<int>(plan.bound.count())}, stop);
    settle(model.problem, schedule, {.looks = 150'000 * std::max(1, options.effort)}, stop);
    // Whoever stays on makes room that the bound did not know.
    if (schedule.overtime != first.overtime)
        plan.bound = Seconds{boundOf(model.problem, schedule)};

    sayOvertime(model.problem, schedule, helpers, session.setting.start, plan.findings);
    plan.tasks = tasksOf(drafts, model, schedule, helpers, quilts);
    plan.finish = Seconds{schedule.finish};
    return plan;
}

} // namespace bastewright
