#include "session/replan.h"

#include "plan/find.h"
#include "planners/crew/crew.h"
#include "planners/crew/zone_points.h"
#include "planners/whole/pins.h"
#include "session/pace.h"
#include "session/pins.h"
#include "session/private/fold.h"
#include "session/private/in_hand.h"
#include "session/private/rest_plan.h"
#include "session/private/tables_taken.h"
#include "session/private/work_log.h"
#include "session/ticks.h"

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

/// What stands in for them in zones that wait, and what speaks against that.
void sayStandIns(const Session& session, const Plan& plan, const LiveState& state,
                 const PinCount& pins, Findings& findings) {
    if (pins.box <= 0) // nobody has said how many there are
        return;
    for (Finding& f : adviceOnStandIns(session, plan.quilts, std::max<std::int64_t>(0, pins.left),
                                       [&](int job, const Zone&zone) {
                                           return waits(state, {job, zone.id});
                                       }))
        if (std::ranges::find(findings, f) == findings.end())
            findings.push_back(std::move(f));
}

void sayTables(const Plan& plan, const Room& room, const LiveState& state, Findings& findings) {
    if (standsOnMissing(plan, room, state))
        findings.push_back(
            {Finding::Kind::tablesGone, Finding::Level::warn, "/room/tables",
             core::says("The plan stands on tables that are not in the room any more."),
             core::says("Put them back, or plan the rest on the tables that are there.")});
}

bool isOfTheRest(const Finding& f) {
    return isAboutPeople(f) || f.kind == Finding::Kind::pinsShort ||
           f.kind == Finding::Kind::dotsPlanned || f.kind == Finding::Kind::tablesGone;
}

} // namespace

std::vector<Task> doneBy(Seconds now, const Plan& plan, const std::set<std::string>& done) {
    std::vector<Task> out;
    for (const auto& t : plan.tasks)
        if (done.contains(t.id)) {
            Task cut = t;
            cut.end = std::min(cut.end, now);
            cut.start = std::min(cut.start, cut.end);
            out.push_back(std::move(cut));
        }
    return out;
}

LiveState asSeenBy(const Plan& plan, LiveState state) {
    takeZones(PlanIndex{plan}, state);
    return state;
}

std::map<std::pair<int, std::string>, int> begunZones(const Session& session, const Plan& plan,
                                                      const LiveState& state) {
    std::map<std::pair<int, std::string>, int> out;
    for (const auto& [key, live] : state.zones) {
        const auto q = static_cast<std::size_t>(key.first);
        if (q >= plan.quilts.size() || q >= session.jobs.size())
            continue;
        const Zone* zone = findZone(plan.quilts[q], key.second);
        if (zone && isBegun(*zone, live))
            out.emplace(key, stepsDone(live.state, wayOf(session.jobs[q], *zone)));
    }
    return out;
}

bool waits(const LiveState& state, const std::pair<int, std::string>& zone) {
    const auto at = state.zones.find(zone);
    return at != state.zones.end() && at->second.state == ZoneState::waiting &&
           !state.setAside.contains(zone);
}

std::optional<std::int64_t> pinsForRest(const Session& session, const Plan& plan,
                                        const LiveState& state) {
    const PinCount pins = countPins(plan, session, state);
    return pins.box > 0 ? std::optional{std::max<std::int64_t>(0, pins.left)} : std::nullopt;
}

bool isStepped(const Plan& plan, const LiveState& state, int job, int pass) {
    return std::ranges::any_of(plan.tasks, [&](const Task& t) {
        return t.job == job && t.pass == pass && t.kind != TaskKind::setUp &&
               state.doneTasks.contains(t.id) && !state.setAside.contains({job, t.zone});
    });
}

bool standsOnMissing(const Plan& plan, const Room& room, const LiveState& state) {
    Sizes left;
    for (const Table& t : room.tables)
        left[sizeOf(t.length, t.width)] += t.count;
    for (const auto& [number, tables] : tablesTaken(plan, state))
        for (const auto& [size, count] : tables)
            if ((left[size] -= count) < 0)
                return true;
    return false;
}

Plan putTogether(Plan base, std::vector<Task> kept, const CrewPlan& crew, const Session& session,
                 const LiveState& state, Seconds now) {
    for (QuiltPlan& q : base.quilts)
        for (Zone& z : q.zones) // what is shared anew comes in any order
            std::ranges::sort(z.points, {}, [](const PlacedPoint& p) {
                return std::tuple{p.at.y, p.at.x, p.angle};
            });
    std::erase_if(base.findings, isOfTheRest);
    base.help.clear(); // it was about the first plan
    std::erase_if(base.breaks, [&](const PlannedBreak& b) { return b.end > now; });
    base.tasks = std::move(kept);
    base.tasks.insert(base.tasks.end(), crew.tasks.begin(), crew.tasks.end());
    base.breaks.insert(base.breaks.end(), crew.breaks.begin(), crew.breaks.end());
    base.findings.insert(base.findings.end(), crew.findings.begin(), crew.findings.end());
    base.range = crew.range;
    const LiveState seen = asSeenBy(base, state);
    const PinCount pins = countPins(base, session, seen);
    sayPins(pins, base.findings);
    sayStandIns(session, base, seen, pins, base.findings);
    sayTables(base, session.setting.room, state, base.findings);

    std::ranges::sort(base.tasks, {}, [](const Task& t) { return std::tie(t.start, t.id); });
    base.finish = Seconds{};
    for (const auto& t : base.tasks)
        base.finish = std::max(base.finish, t.end);
    base.finishBound = crew.tasks.empty() ? base.finish : std::min(base.finish, crew.bound);
    return base;
}

Plan replan(const Session& session, const Plan& plan, const LiveState& state,
            const ReplanOptions& options, std::stop_token stop) {
    Plan out = plan;
    const Situation situation{.now = options.now,
                              .before = &plan,
                              .done = state.doneTasks,
                              .inHand = options.inHand,
                              .begun = begunZones(session, plan, state),
                              .setAside = state.setAside,
                              .present = state.present,
                              .lastRest = options.lastRest,
                              .pins = pinsForRest(session, plan, state)};
    const Session paced = withLearntPaces(session, options);
    const CrewPlan crew =
        planRest(paced, out.quilts, pointsOfZones(plan.quilts), situation, {}, std::move(stop));
    return putTogether(std::move(out), doneBy(options.now, plan, state.doneTasks), crew, session,
                       state, options.now);
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
