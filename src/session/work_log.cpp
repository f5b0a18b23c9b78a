#include "session/private/work_log.h"

#include "plan/trade_times.h"
#include "session/effective.h"
#include "session/ticks.h"

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

constexpr std::int64_t kClockWasSetMs = 10 * 60 * 1000;

constexpr std::int64_t kLongestAgoSeconds = 24 * 60 * 60;

struct Ratio {
    double trade = 0, planned = 0;
    double pace() const { return trade > 0 && planned > 0 ? trade / planned : 1; }
};

// The pace each person was planned at: the trade's time for their zones over the planned time.
std::map<std::string, double> plannedPaces(const PlanIndex& index) {
    std::map<std::string, Ratio> sums;
    for (const auto& t : index.plan().tasks) {
        const Zone* zone = t.people.size() == 1 ? index.zone(t.job, t.zone) : nullptr;
        if (!zone)
            continue;
        auto& sum = sums[t.people.front()];
        sum.trade += tradeSeconds(t.kind, zone->points.size());
        sum.planned += double((t.end - t.start).count());
    }
    std::map<std::string, double> out;
    for (const auto& [who, sum] : sums)
        out.emplace(who, sum.pace());
    return out;
}

// Which ticks are new work: each of a zone's steps once, in order. Says nothing about passes; a
// tick of the wrong pass is so rare, and its time so plausible, that it does no harm.
class FirstTicks {
public:
    explicit FirstTicks(const PlanIndex& index)
        : index_{index} {}

    bool counts(const happened::ZoneTick& tick) {
        const Zone* zone = index_.zone(tick.job, tick.zone);
        if (!zone)
            return false;
        std::ptrdiff_t& at = step_[{tick.job, tick.zone}];
        const Way& way = index_.way(tick.job, *zone);
        const auto work = workAt(tick.kind, way);
        if (!work)
            return false;
        const auto steps = way.zoneWork();
        const auto needs = tick.kind == Tick::pressed
                               ? std::ssize(steps)
                               : std::ranges::find(steps, *work) - steps.begin();
        if (at != needs)
            return false;
        ++at;
        return true;
    }

private:
    const PlanIndex& index_;
    std::map<std::pair<int, std::string>, std::ptrdiff_t> step_;
};

// Planned seconds of what was ticked, as if planned for the person who did it.
double plannedFor(const happened::ZoneTick& tick, const PlanIndex& index,
                  const std::map<std::string, double>& paces) {
    const auto paceOf = [&paces](const std::string& who) {
        const auto it = paces.find(who);
        return it == paces.end() ? 1.0 : it->second;
    };
    double seconds = 0;
    for (const Task* t : index.ticked(tick.job, tick.zone, tick.kind)) {
        double own = double((t->end - t->start).count());
        if (t->people.size() == 1 && t->people.front() != tick.person &&
            paces.contains(tick.person))
            own *= paceOf(t->people.front()) / paceOf(tick.person);
        seconds += own;
    }
    return seconds;
}

} // namespace

void TableClock::advance(std::int64_t atMs) {
    if (!running_) {
        running_ = true;
        latest_ = atMs;
        return;
    }
    if (atMs < latest_) {
        if (latest_ - atMs > kClockWasSetMs) {
            latest_ = atMs;
            ++timesSet_;
        }
        return;
    }
    session_ += atMs - latest_;
    if (!paused_)
        working_ += atMs - latest_;
    latest_ = atMs;
}

double tradeSeconds(TaskKind kind, std::size_t points) {
    return zoneStep(kind).seconds * double(points) + trade_times::kStepUpToZone;
}

std::int64_t WorkLog::since(const std::string& person, int job) const {
    std::int64_t latest = 0;
    if (const auto it = personSince.find(person); it != personSince.end())
        latest = std::max(latest, it->second);
    if (const auto it = quiltSince.find(job); it != quiltSince.end())
        latest = std::max(latest, it->second);
    return latest;
}

WorkLog workLog(const Plan& plan, std::span<const Event> events, std::int64_t nowMs) {
    const PlanIndex index{plan};
    const auto paces = plannedPaces(index);
    const auto counts = effective(events);
    FirstTicks first{index};
    TableClock clock;
    WorkLog log;
    bool started = false;
    std::map<std::string, double> cutOff; // of each one's last tick: what was more than is believed
    std::map<std::string, int> setAt;     // how often a clock had been set at each one's last tick

    for (std::size_t i = 0; i < events.size(); ++i) {
        const Event& e = events[i];
        if (!started && !e.is<happened::Started>())
            continue;
        if (counts.reasons[i].empty()) // an event stored twice carries no second time
            clock.advance(e.atMs);
        if (!counts.inEffect[i])
            continue;
        const auto now = clock.working();
        // Ticked late, and said so.
        const auto doneAt = [&](const auto& done) {
            return done.secondsAgo <= 0
                       ? now
                       : std::max(log.since(done.person, done.job),
                                  now - std::min(done.secondsAgo, kLongestAgoSeconds) * 1000);
        };
        const auto since = [&](const std::string& person, std::int64_t at) {
            log.personSince[person] = at;
            setAt[person] = clock.timesSet();
        };
        std::visit(ForEach{[&](const happened::Started&) { started = true; },
                           [&](const happened::ZoneTick& tick) {
                               const auto at = doneAt(tick);
                               if (!first.counts(tick))
                                   return;
                               const double planned = plannedFor(tick, index, paces);
                               double actual = double(at - log.since(tick.person, tick.job)) / 1000;
                               // Sooner than anybody works: ticked together with the one before,
                               // whose time it shares.
                               double& over = cutOff[tick.person];
                               actual = actual < planned / kFastestLearnt ? actual + over : actual;
                               over = std::max(0.0, actual - kLongestShare * planned);
                               log.ticks.push_back(
                                   {.person = tick.person,
                                    .plannedSeconds = planned,
                                    .actualSeconds = std::min(actual, kLongestShare * planned),
                                    .measured = setAt[tick.person] == clock.timesSet()});
                               since(tick.person, at);
                           },
                           [&](const happened::Step& step) {
                               if (const Task* t = index.task(step.task))
                                   log.quiltSince[t->job] = doneAt(step);
                           },
                           [&](const happened::Released& pass) { log.quiltSince[pass.job] = now; },
                           [&](const happened::Presence& who) {
                               if (who.kind == happened::Presence::Kind::in)
                                   since(who.person, now);
                           },
                           [&](const happened::Paused&) { clock.pause(); },
                           [&](const happened::Resumed&) {
                               clock.resume();
                               log.lastRest = now;
                               log.restEnd = clock.session();
                           },
                           [&](const happened::NewPlan&) { log.ticks.clear(); },
                           [](const auto&) {}},
                   e.what);
    }
    if (started && nowMs > 0)
        clock.advance(nowMs);
    log.working = clock.working();
    log.session = clock.session();
    return log;
}

} // namespace bastewright
