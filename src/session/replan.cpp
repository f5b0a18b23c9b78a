#include "session/replan.h"

#include "planners/crew/bound.h"
#include "session/pace.h"
#include "session/pins.h"
#include "session/private/rest_schedule.h"
#include "session/private/work_log.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace bastewright {
namespace {

using crew::Problem;
using crew::Schedule;

// A bound that holds even where somebody has to stay on.
int boundOf(Problem problem, bool overtime) {
    if (overtime)
        for (auto& p : problem.people)
            p.until = crew::kNever;
    return crew::lowerBound(problem);
}

Task taskOf(const Remaining& r, const Schedule& s, std::size_t i, const std::vector<Hand>& hands,
            Seconds now) {
    Task t = *r.tasks[i];
    t.people.clear();
    t.places.clear();
    for (const int p : s.crew[i]) {
        const auto k = static_cast<std::size_t>(p);
        t.people.push_back(hands[k < hands.size() ? k : r.shadows[k - hands.size()]].helper.name);
    }
    if (r.inHand.contains(i)) {
        // They stand where they stand, and have begun.
        t.places = r.tasks[i]->places;
        t.start = now;
        t.end = now + Seconds{s.end[i] - s.start[i]};
        return t;
    }
    if (s.strip[i] >= 0)
        t.places.push_back(placeOf(r, s, i));
    t.start = now + Seconds{s.start[i]};
    t.end = now + Seconds{s.end[i]};
    return t;
}

// Hours, for people: who would have to stay, and until when.
void sayOvertime(const Remaining& r, const Schedule& s, const std::vector<Hand>& hands,
                 const Setting& setting, Seconds now, Findings& findings) {
    if (s.overtime == 0)
        return;
    for (std::size_t h = 0; h < hands.size(); ++h) {
        int last = 0;
        for (std::size_t i = 0; i < s.crew.size(); ++i)
            if (std::ranges::find(s.crew[i], static_cast<int>(h)) != s.crew[i].end())
                last = std::max(last, s.end[i]);
        const int over = last - r.model.problem.people[h].until;
        if (over <= 0)
            continue;
        const auto end = (now + Seconds{last + 59}) / 60 * 60;
        const auto& who = hands[h].helper.name;
        findings.push_back({Finding::Level::warn, "/helpers",
                            core::says("The rest runs %1 past the hours of %2.", Seconds{over},
                                       who),
                            core::says("It works if %1 stays until %2.", who,
                                       after(setting.start, end))});
    }
}

void sayPins(const PinCount& pins, Findings& findings) {
    if (pins.shortBy() == 0)
        return;
    findings.push_back(
        {Finding::Level::warn, "/stash/pins",
         core::says("%1 pins are still to be placed, and %2 are left.", pins.toPlace,
                    std::max<std::int64_t>(0, pins.left)),
         core::says("Fetch %1 more.", pins.shortBy())});
}

bool fits(Length length, Length width, const Table& table) {
    const auto [s, l] = std::minmax(length, width);
    const auto [ts, tl] = std::minmax(table.length, table.width);
    return ts == s && tl == l;
}

// The tables the plan was made for, against those in the room now.
void sayTables(const Plan& plan, const Room& room, Findings& findings) {
    auto left = room.tables;
    std::set<int> seen; // quilts that follow one another stand on the same tables
    for (const auto& q : plan.quilts) {
        if (!seen.insert(q.surface.number).second)
            continue;
        for (const auto& t : q.surface.tables) {
            const auto same = std::ranges::find_if(left, [&t](const Table& have) {
                return have.count > 0 && fits(t.width(), t.length(), have);
            });
            if (same != left.end()) {
                --same->count;
                continue;
            }
            findings.push_back({Finding::Level::warn, "/room/tables",
                                core::says("The plan stands on tables that are not in the room "
                                           "any more."),
                                core::says("Put them back, or finish the pass in hand and plan the "
                                           "rest of the quilt as a job of its own.")});
            return;
        }
    }
}

bool isOfTheRest(const Finding& f) {
    return f.field.starts_with("/helpers") || f.field.starts_with("/stash/pins") ||
           f.field.starts_with("/room/irons") || f.field.starts_with("/room/tables");
}

} // namespace

Plan replan(const Session& session, const Plan& plan, const LiveState& state,
            const ReplanOptions& options, std::stop_token stop) {
    Plan out = plan;
    std::erase_if(out.findings, isOfTheRest);
    out.tasks.clear();
    out.help.clear(); // it was about the first plan
    for (const auto& t : plan.tasks)
        if (state.doneTasks.contains(t.id)) {
            Task done = t;
            done.end = std::min(done.end, options.now);
            done.start = std::min(done.start, done.end);
            out.tasks.push_back(std::move(done));
        }

    const auto hands = handsOf(session.setting, state, options);
    const auto rest = remainingOf(session, plan, state, hands, options);
    const auto& problem = rest.model.problem;
    int bound = boundOf(problem, false);
    if (problem.size() > 0) {
        const auto schedule = scheduleOf(rest, hands, bound, options.effort, stop);
        if (schedule.overtime > 0)
            bound = boundOf(problem, true);
        for (std::size_t i = 0; i < rest.tasks.size(); ++i)
            out.tasks.push_back(taskOf(rest, schedule, i, hands, options.now));
        sayOvertime(rest, schedule, hands, session.setting, options.now, out.findings);
    }
    out.findings.insert(out.findings.end(), rest.findings.begin(), rest.findings.end());
    sayPins(countPins(plan, session.setting, state), out.findings);
    sayTables(plan, session.setting.room, out.findings);

    std::ranges::sort(out.tasks, {}, [](const Task& t) { return std::tie(t.start, t.id); });
    out.finish = Seconds{};
    for (const auto& t : out.tasks)
        out.finish = std::max(out.finish, t.end);
    out.finishBound =
        problem.size() > 0 ? std::min(out.finish, options.now + Seconds{bound}) : out.finish;
    return out;
}

ReplanOptions replanNow(const Plan& plan, const Setting& setting, const LiveState& state,
                        std::span<const Event> events, std::int64_t nowMs) {
    const WorkLog log = workLog(plan, events, nowMs);
    ReplanOptions options{.now = Seconds{log.session / 1000}};
    for (const auto& who : state.present)
        options.pace.emplace(who, learntPace(log, who));
    for (const Task* t : tasksInHand(plan, state, setting.room.irons)) {
        auto since = log.since({}, t->job);
        for (const auto& who : t->people)
            since = std::max(since, log.since(who, t->job));
        options.inHand.emplace(t->id, Seconds{(log.working - since) / 1000});
    }
    return options;
}

Session withLearntPaces(Session session, const ReplanOptions& options) {
    for (auto& helper : session.setting.helpers)
        helper.pace = paceWith(helper, options);
    return session;
}

} // namespace bastewright
