#include "session/replan.h"

#include "planners/crew/crew.h"
#include "session/pace.h"
#include "session/pins.h"
#include "session/private/in_hand.h"
#include "session/private/work_log.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace bastewright {
namespace {

void sayPins(const PinCount& pins, Findings& findings) {
    if (pins.shortBy() == 0)
        return;
    findings.push_back({Finding::Kind::pinsShort,
                        Finding::Level::warn,
                        "/stash/pins",
                        core::says("%1 pins are still to be placed, and %2 are left.", pins.toPlace,
                                   std::max<std::int64_t>(0, pins.left)),
                        core::says("Fetch %1 more.", pins.shortBy()),
                        {},
                        {int(pins.shortBy())}});
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
            findings.push_back({Finding::Kind::tablesGone, Finding::Level::warn, "/room/tables",
                                core::says("The plan stands on tables that are not in the room "
                                           "any more."),
                                core::says("Put them back, or finish the pass in hand and plan the "
                                           "rest of the quilt as a job of its own.")});
            return;
        }
    }
}

bool isOfTheRest(const Finding& f) {
    return isAboutPeople(f) || f.kind == Finding::Kind::pinsShort ||
           f.kind == Finding::Kind::tablesGone;
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
    std::erase_if(out.breaks, [&](const PlannedBreak& b) { return b.end > options.now; });

    const Situation situation{.now = options.now,
                              .before = &plan,
                              .done = state.doneTasks,
                              .inHand = options.inHand,
                              .setAside = state.setAside,
                              .present = state.present,
                              .lastRest = options.lastRest};
    const Session paced = withLearntPaces(session, options);
    const CrewPlan crew =
        planRest(paced, out.quilts, pointsOfZones(plan.quilts), situation, {}, std::move(stop));
    out.tasks.insert(out.tasks.end(), crew.tasks.begin(), crew.tasks.end());
    out.breaks.insert(out.breaks.end(), crew.breaks.begin(), crew.breaks.end());
    out.findings.insert(out.findings.end(), crew.findings.begin(), crew.findings.end());
    out.range = crew.range;
    sayPins(countPins(plan, session.setting, state), out.findings);
    sayTables(plan, session.setting.room, out.findings);

    std::ranges::sort(out.tasks, {}, [](const Task& t) { return std::tie(t.start, t.id); });
    out.finish = Seconds{};
    for (const auto& t : out.tasks)
        out.finish = std::max(out.finish, t.end);
    out.finishBound = crew.tasks.empty() ? out.finish : std::min(out.finish, crew.bound);
    return out;
}

ReplanOptions replanNow(const Plan& plan, const LiveState& state, std::span<const Event> events,
                        std::int64_t nowMs) {
    const WorkLog log = workLog(plan, events, nowMs);
    ReplanOptions options{.now = Seconds{log.session / 1000}};
    options.lastRest = Seconds{log.restEnd / 1000};
    for (const auto& who : state.present)
        options.pace.emplace(who, learntPace(log, who));
    for (const Task* t : tasksInHand(plan, state)) {
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
