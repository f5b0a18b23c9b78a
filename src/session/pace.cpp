#include "session/pace.h"

#include "session/private/work_log.h"

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

constexpr std::size_t kEnough = 3; // ticks before a pace is believed

struct Sums {
    double planned = 0, actual = 0;
    std::size_t ticks = 0;
    void add(const TimedTick& t) {
        planned += t.plannedSeconds;
        actual += t.actualSeconds;
        ++ticks;
    }
    bool enough() const { return ticks >= kEnough && planned > 0; }
    // A sum of times, not a mean of ratios: zones ticked late and together come out right.
    double pace() const {
        return actual <= 0 ? kFastestLearnt
                           : std::clamp(planned / actual, kSlowestLearnt, kFastestLearnt);
    }
};

struct Paces {
    Sums all;
    std::map<std::string, Sums> people;
    double of(const std::string& who) const {
        const auto it = people.find(who);
        if (it != people.end() && it->second.enough())
            return it->second.pace();
        return all.enough() ? all.pace() : 1;
    }
};

Paces pacesOf(const WorkLog& log) {
    Paces out;
    for (const auto& t : log.ticks)
        if (t.measured) {
            out.all.add(t);
            out.people[t.person].add(t);
        }
    return out;
}

// How widely single pieces of work scatter round their people's pace, as a share. Starts from a
// guess (35 %, worth four pieces) so that two lucky ticks do not promise a minute's precision.
double scatter(const WorkLog& log, const Paces& paces) {
    constexpr double guess = 0.35, worth = 4;
    double sum = worth * guess * guess, n = worth;
    for (const auto& t : log.ticks) {
        if (!t.measured || t.plannedSeconds <= 0)
            continue;
        const double expected = t.plannedSeconds / paces.of(t.person);
        const double off = (t.actualSeconds - expected) / expected;
        sum += off * off;
        n += 1;
    }
    return std::sqrt(sum / n);
}

// Plays what is left forward: everybody's tasks in the plan's order, at the learnt paces.
class Rest {
public:
    Rest(const Plan& plan, const LiveState& state, const WorkLog& log, const Paces& paces)
        : plan_{plan}
        , state_{state}
        , log_{log}
        , paces_{paces}
        , now_{double(log.session) / 1000} {}

    /// Seconds from the start to the end of the last task.
    double play() {
        double finish = now_;
        for (const auto& t : plan_.tasks)
            if (!state_.doneTasks.contains(t.id))
                finish = std::max(finish, playTask(t));
        return finish;
    }

private:
    double playTask(const Task& t) {
        const auto people = doers(t);
        double ready = now_, pace = people.empty() ? 1 : kFastestLearnt;
        bool waits = false;
        for (const auto& id : t.after)
            if (const auto it = ends_.find(id); it != ends_.end()) {
                ready = std::max(ready, it->second);
                waits = true;
            }
        for (const auto& who : people) {
            pace = std::min(pace, paces_.of(who));
            if (const auto it = free_.find(who); it != free_.end()) {
                ready = std::max(ready, it->second);
                waits = true;
            }
        }
        double length = double((t.end - t.start).count()) / pace;
        // Work that could start before now is in hand already; what has gone into it is taken off,
        // but never all of it, for nobody has ticked it yet.
        if (!waits && !t.zone.empty() && people.size() == 1) {
            const double since = double(log_.working - log_.since(people.front(), t.job)) / 1000;
            length = std::max(length - std::max(since, 0.0), length / 10);
        }
        const double end = ready + length;
        for (const auto& who : people)
            free_[who] = end;
        return ends_[t.id] = end;
    }

    // The planned people, those who are away replaced by whoever is free first.
    std::vector<std::string> doers(const Task& t) const {
        std::vector<std::string> out;
        std::size_t away = 0;
        for (const auto& who : t.people)
            if (state_.present.contains(who))
                out.push_back(who);
            else
                ++away;
        for (; away > 0; --away) {
            const std::string* best = nullptr;
            for (const auto& who : state_.present)
                if (std::ranges::find(out, who) == out.end() &&
                    (!best || freeAt(who) < freeAt(*best)))
                    best = &who;
            if (!best)
                break;
            out.push_back(*best);
        }
        return out;
    }

    double freeAt(const std::string& who) const {
        const auto it = free_.find(who);
        return it == free_.end() ? now_ : it->second;
    }

    const Plan& plan_;
    const LiveState& state_;
    const WorkLog& log_;
    const Paces& paces_;
    double now_;
    std::map<std::string, double> ends_, free_;
};

Seconds whole(double seconds) {
    return Seconds{std::llround(seconds)};
}

} // namespace

double learntPace(const WorkLog& log, const std::string& person) {
    const auto paces = pacesOf(log);
    const auto it = paces.people.find(person);
    return it != paces.people.end() && it->second.enough() ? it->second.pace() : 1;
}

double learntPace(const Plan& plan, std::span<const Event> events, const std::string& person) {
    return learntPace(workLog(plan, events, 0), person);
}

Seconds elapsed(std::span<const Event> events, std::int64_t nowMs) {
    return Seconds{workLog({}, events, nowMs).session / 1000};
}

Forecast forecast(const Plan& plan, const LiveState& state, std::span<const Event> events,
                  std::int64_t nowMs) {
    if (!state.started)
        return {plan.finish, plan.finish, plan.finish, plan.finish};
    const WorkLog log = workLog(plan, events, state.ended ? state.lastMs : nowMs);
    const Paces paces = pacesOf(log);
    const double now = double(log.session) / 1000;
    const double finish = state.ended ? now : Rest{plan, state, log, paces}.play();
    const double left = finish - now;

    // Two doubts, both of the size of the scatter: the mean pace comes from so many ticks, and each
    // person's rest is a sum of so few pieces. 1.28 standard deviations either way hold 8 in 10.
    std::size_t open = 0;
    for (const auto& t : plan.tasks)
        open += !t.zone.empty() && !state.doneTasks.contains(t.id);
    const double people = double(std::max<std::size_t>(1, state.present.size()));
    const double perPerson = std::max(1.0, double(open) / people);
    const double s = scatter(log, paces);
    const double doubt = 1.28 * s * std::sqrt(1 / (4 + double(paces.all.ticks)) + 1 / perPerson);
    return {.finish = whole(finish),
            .early = whole(now + left * std::exp(-doubt)),
            .late = whole(now + left * std::exp(doubt)),
            .left = whole(left)};
}

} // namespace bastewright
