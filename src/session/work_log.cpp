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

bool isTick(EventKind kind) {
    return kind == EventKind::zoneDotted || kind == EventKind::zoneOpened ||
           kind == EventKind::zoneClosed || kind == EventKind::zonePressed;
}

// Which ticks are new work: each of a zone's steps once, in order. Says nothing about passes; a
// tick of the wrong pass is so rare, and its time so plausible, that it does no harm.
class FirstTicks {
public:
    explicit FirstTicks(const PlanIndex& index)
        : index_{index} {}

    bool counts(const Event& e) {
        if (!index_.zone(e.job, e.zone))
            return false;
        std::ptrdiff_t& at = step_[{e.job, e.zone}];
        const Way& way = index_.way(e.job);
        const auto work = workAt(e.kind, way);
        if (!work)
            return false;
        const auto steps = way.zoneWork();
        const auto needs = e.kind == EventKind::zonePressed
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
double plannedFor(const Event& e, const PlanIndex& index,
                  const std::map<std::string, double>& paces) {
    const auto paceOf = [&paces](const std::string& who) {
        const auto it = paces.find(who);
        return it == paces.end() ? 1.0 : it->second;
    };
    double seconds = 0;
    for (const Task* t : index.ticked(e.job, e.zone, e.kind)) {
        double own = double((t->end - t->start).count());
        if (t->people.size() == 1 && t->people.front() != e.person && paces.contains(e.person))
            own *= paceOf(t->people.front()) / paceOf(e.person);
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
    return zoneStep(kind).seconds * double(points) + trade_times::kSettle;
}

std::int64_t WorkLog::since(const std::string& person, int job) const {
    std::int64_t latest = 0;
    if (const auto it = personSince.find(person); it != personSince.end())
        latest = std::max(latest, it->second);
    if (const auto it = quiltSince.find(job); it != quiltSince.end())
        latest = std::max(latest, it->second);
    return latest;
}

std::span<const TimedTick> WorkLog::ticksSinceRest() const {
    const auto first =
        std::ranges::find_if(ticks, [this](const TimedTick& t) { return t.atWorking > lastRest; });
    return {first, ticks.end()};
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
        if (!started && e.kind != EventKind::sessionStarted)
            continue;
        if (counts.reasons[i].empty()) // an event stored twice carries no second time
            clock.advance(e.atMs);
        if (!counts.inEffect[i])
            continue;
        auto now = clock.working();
        // Ticked late, and said so.
        if (e.count > 0 && (isTick(e.kind) || e.kind == EventKind::stepDone))
            now = std::max(log.since(e.person, e.job),
                           now - std::min(e.count, kLongestAgoSeconds) * 1000);
        if (isTick(e.kind)) {
            if (!first.counts(e))
                continue;
            const double planned = plannedFor(e, index, paces);
            double actual = double(now - log.since(e.person, e.job)) / 1000;
            // Sooner than anybody works: ticked together with the one before, whose time it shares.
            double& over = cutOff[e.person];
            actual = actual < planned / kFastestLearnt ? actual + over : actual;
            over = std::max(0.0, actual - kLongestShare * planned);
            log.ticks.push_back({.person = e.person,
                                 .job = e.job,
                                 .zone = e.zone,
                                 .kind = e.kind,
                                 .plannedSeconds = planned,
                                 .actualSeconds = std::min(actual, kLongestShare * planned),
                                 .atWorking = now,
                                 .measured = setAt[e.person] == clock.timesSet()});
            log.personSince[e.person] = now;
            setAt[e.person] = clock.timesSet();
            continue;
        }
        switch (e.kind) {
        case EventKind::sessionStarted:
            started = true;
            break;
        case EventKind::stepDone:
            if (const Task* t = index.task(e.task))
                log.quiltSince[t->job] = now;
            break;
        case EventKind::passReleased:
            log.quiltSince[e.job] = now;
            break;
        case EventKind::personIn:
            log.personSince[e.person] = now;
            setAt[e.person] = clock.timesSet();
            break;
        case EventKind::paused:
            clock.pause();
            break;
        case EventKind::resumed:
            clock.resume();
            log.lastRest = now;
            log.restEnd = clock.session();
            break;
        case EventKind::replanned:
            log.ticks.clear();
            break;
        default:
            break;
        }
    }
    if (started && nowMs > 0)
        clock.advance(nowMs);
    log.working = clock.working();
    log.session = clock.session();
    return log;
}

} // namespace bastewright
