#include "session/pace.h"

#include "planners/crew/afternoons.h"
#include "session/private/in_hand.h"
#include "session/private/learnt.h"
#include "session/private/work_log.h"

#include <algorithm>

namespace bastewright {
namespace {

/// The planned people, those who are away, or have left by then, replaced by whoever has least of
/// what is left.
std::vector<Task> withThoseHere(std::vector<Task> tasks, const LiveState& state,
                                const std::vector<crew::Hand>& hands, Seconds now) {
    std::map<std::string, Seconds> load;
    const auto here = [&](const std::string& who) {
        if (state.present.contains(who))
            return true;
        // Whose hours have yet to begin comes.
        return std::ranges::any_of(hands, [&](const crew::Hand& h) {
            return h.helper.name == who && Seconds{h.from} > now && h.from < crew::kAlways;
        });
    };
    const auto leftBy = [&](const std::string& who, Seconds start) {
        return std::ranges::any_of(hands, [&](const crew::Hand& h) {
            return h.helper.name == who && Seconds{h.until} <= start && Seconds{h.until} > now;
        });
    };
    for (const auto& t : tasks)
        for (const auto& who : t.people)
            load[who] += t.end - t.start;
    for (auto& t : tasks)
        for (auto& who : t.people) {
            if ((here(who) && !leftBy(who, t.start)) || state.present.empty())
                continue;
            const std::string* best = nullptr;
            for (const auto& other : state.present)
                if (std::ranges::find(t.people, other) == t.people.end() &&
                    !leftBy(other, t.start) && (!best || load[other] < load[*best]))
                    best = &other;
            if (best) {
                load[*best] += t.end - t.start;
                who = *best;
            }
        }
    return tasks;
}

} // namespace

double learntPace(const WorkLog& log, const std::string& person) {
    return std::clamp(1 / learntFrom(log).slowness(person), kSlowestLearnt, kFastestLearnt);
}

double learntPace(const Plan& plan, std::span<const Event> events, const std::string& person) {
    return learntPace(workLog(plan, events, 0), person);
}

Seconds elapsed(std::span<const Event> events, std::int64_t nowMs) {
    return Seconds{workLog({}, events, nowMs).session / 1000};
}

ClockTime hoursCountFrom(ClockTime planned, std::optional<ClockTime> began) {
    constexpr std::chrono::hours kEarly{3}, kLate{6};
    if (!began)
        return planned;
    const auto late = began->sinceMidnight - planned.sinceMidnight;
    return late >= -kEarly && late <= kLate ? *began : planned;
}

Forecast forecast(const Plan& plan, const Setting& setting, const LiveState& state,
                  std::span<const Event> events, std::int64_t nowMs) {
    if (!state.started)
        return {plan.finish, std::min(plan.finish, plan.range.early),
                std::max(plan.finish, plan.range.late), plan.finish};
    const WorkLog log = workLog(plan, events, state.ended ? state.lastMs : nowMs);
    const Seconds now{log.session / 1000};
    if (state.ended)
        return {now, now, now, Seconds{}};
    std::vector<Task> left;
    for (const auto& t : plan.tasks)
        if (!state.doneTasks.contains(t.id) && !state.setAside.contains({t.job, t.zone}))
            left.push_back(t);
    crew::AfternoonFrom from;
    from.now = now;
    from.hands = crew::handsOf(setting.helpers, setting.start);
    for (auto& h : from.hands)
        if (state.present.contains(h.helper.name))
            h.from = 0;
    const Learnt learnt = learntFrom(log);
    from.common = learnt.common;
    from.people = learnt.people;
    for (const Task* t : tasksInHand(plan, state)) {
        auto since = log.since({}, t->job);
        for (const auto& who : t->people)
            since = std::max(since, log.since(who, t->job));
        from.inHand.emplace(t->id, Seconds{(log.working - since) / 1000});
    }
    std::vector<PlannedBreak> breaks;
    for (const auto& b : plan.breaks)
        if (b.start >= now && b.start > Seconds{log.restEnd / 1000})
            breaks.push_back(b);
    const auto range =
        crew::finishRange(withThoseHere(std::move(left), state, from.hands, now), breaks, from);
    return {.finish = range.middle,
            .early = range.early,
            .late = range.late,
            .left = range.middle - now};
}

} // namespace bastewright
