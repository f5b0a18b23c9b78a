#include "session/nudge.h"

#include "session/pace.h"
#include "session/pins.h"
#include "session/private/work_log.h"
#include "session/turns.h"

#include <algorithm>

namespace bastewright {
namespace {

// Common practice: a break every 75 to 90 minutes of work.
constexpr std::int64_t kRestMs = 75 * 60 * 1000;

// A zone is slow once it takes twice its time and at least three minutes more.
constexpr double kSlowTimes = 2, kSlowSeconds = 180;

// A finish is late by more than a tenth, and at least ten minutes.
constexpr double kLateShare = 0.1;
constexpr Seconds kLateLeast{600};

Seconds whole(double seconds) {
    return Seconds{std::int64_t(seconds)};
}

void addRest(const LiveState& state, const WorkLog& log, std::vector<Nudge>& out) {
    const auto worked = log.working - log.lastRest;
    if (state.paused || state.ended)
        return;
    if (worked >= kRestMs)
        out.push_back({.kind = Nudge::Kind::rest,
                       .text = core::says("It is %1 since the last break: five minutes off their "
                                          "feet do everybody good. Irons off first.",
                                          whole(double(worked) / 1000))});
}

void addSlowZones(const Plan& plan, const std::vector<Helper>& helpers, const LiveState& state,
                  const WorkLog& log, std::vector<Nudge>& out) {
    if (state.paused)
        return;
    const Turns turns{plan, helpers, state};
    for (const auto& now : turns.whoWaitsForWhat()) {
        if (now.doing != PersonNow::Doing::works || now.task->zone.empty())
            continue;
        const Task& task = *now.task;
        const std::string& who = now.person;
        const double planned = double((task.end - task.start).count()) / learntPace(log, who);
        const double spent = double(log.working - log.since(who, task.job)) / 1000;
        if (spent > kSlowTimes * planned && spent > planned + kSlowSeconds)
            out.push_back({.kind = Nudge::Kind::slowZone,
                           .job = task.job,
                           .zone = task.zone,
                           .person = who,
                           .text = core::says("Zone %1 has been with %2 for %3 instead of %4: "
                                              "perhaps somebody can lend a hand, or it is done "
                                              "and not ticked.",
                                              std::string{zoneName(task.zone)}, who, whole(spent),
                                              whole(planned))});
    }
}

void addLateness(const Plan& plan, Seconds finish, std::vector<Nudge>& out) {
    const auto late = finish - plan.finish;
    if (late < kLateLeast || double(late.count()) < kLateShare * double(plan.finish.count()))
        return;
    out.push_back(
        {.kind = Nudge::Kind::behind,
         .text = core::says("At this pace the work ends %1 later than planned: planning the rest "
                            "again may win some of it back.",
                            late)});
}

} // namespace

std::vector<Nudge> nudges(const Plan& plan, const Setting& setting, const LiveState& state,
                          std::span<const Event> events, std::int64_t nowMs, Seconds finish) {
    std::vector<Nudge> out;
    if (!state.started)
        return out;
    const auto pins = countPins(plan, setting, state);
    if (auto notice = missingPinsNotice(pins); !notice.empty())
        out.push_back({.kind = Nudge::Kind::pinsMissing, .text = std::move(notice)});
    if (state.ended)
        return out;
    if (pins.shortBy() > 0)
        out.push_back({.kind = Nudge::Kind::pinsShort,
                       .text = core::says("%1 pins are still to be placed and %2 are left: fetch "
                                          "%3 more, or plan the rest with wider spacing.",
                                          pins.toPlace, std::max<std::int64_t>(0, pins.left),
                                          pins.shortBy())});
    const WorkLog log = workLog(plan, events, nowMs);
    addSlowZones(plan, setting.helpers, state, log, out);
    addLateness(plan, finish, out);
    addRest(state, log, out);
    return out;
}

} // namespace bastewright
