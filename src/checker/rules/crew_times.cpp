#include "checker/geometry/standing_reach.h"
#include "checker/rules/rules.h"
#include "checker/task_traits.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <set>

namespace bastewright::check {
namespace {

/// The pace a team works at: its slowest member's.
double pace(const PlanView& v, const Task& t) {
    double slowest = std::numeric_limits<double>::infinity();
    for (const std::string& who : t.people)
        if (const Helper* h = v.helper(who))
            slowest = std::min(slowest, h->pace);
    return std::isfinite(slowest) ? slowest : 1.0;
}

/// What goes with a zone besides its points takes so many seconds, at everybody's own pace (common
/// practice).
constexpr double kStepUpToZone = 15;

/// Seconds a task of a whole pass takes at pace 1, alone or with others; of holds, which people
/// share, all together; nothing is known of turning. All of them common practice.
double secondsOfPass(const Pass& p, TaskKind kind) {
    int clamps = 0, all = 0;
    for (const Hold& h : p.holds) {
        all += h.count;
        clamps += h.kind == Hold::Kind::clamp ? h.count : 0;
    }
    // Where cloth is rolled a foot of the roll takes as long as a clamp, set and moved.
    double rolled = 0;
    for (const Roll& r : p.rolls)
        rolled += 2 * std::ceil(r.along.in() / 12 - 1e-9);
    switch (kind) {
    case TaskKind::layBacking:
    case TaskKind::layBatting:
    case TaskKind::layTop:
        return ((p.number == 1 ? 420 : 180) + 4 * areaSquareInches(p.fresh) / 144) / 3;
    case TaskKind::clamp:
        return all == 0 ? 0 : 17 * (all + rolled);
    case TaskKind::reclamp:
        return 17.0 * clamps;
    case TaskKind::smooth:
        return 90;
    case TaskKind::checkUnderside:
        return 120;
    case TaskKind::shift:
        return 180 + 2 * std::hypot(p.shift.dx.in(), p.shift.dy.in());
    case TaskKind::foldBack:
    case TaskKind::foldForward:
        return 60 + areaSquareInches(p.fresh) / 144;
    case TaskKind::cool:
        return 120;
    case TaskKind::settle:
        return 180;
    case TaskKind::handOver:
        return 300;
    default:
        return 0;
    }
}

/// Holds are shared: everybody's pace counts.
double paces(const PlanView& v, const Task& t) {
    double sum = 0;
    for (const std::string& who : t.people)
        if (const Helper* h = v.helper(who))
            sum += h->pace;
    return sum;
}

} // namespace

// The work that was given, seconds times pace, must cover what the trade's times ask; each task may
// have been rounded up or to the nearest second.
void crewTimes(const PlanView& v, Report& report) {
    for (const QuiltView& quilt : v.quilts) {
        // What several tasks of one kind give to the same zone or pass, in seconds at pace 1.
        struct Given {
            double work = 0;
            const Task* last = nullptr;
        };
        std::map<std::tuple<TaskKind, int, std::string>, Given> all;
        for (const Task* t : quilt.tasks()) {
            const double steppingUp = isOfZone(t->kind) ? kStepUpToZone : 0;
            const double work =
                (double(Seconds{t->end - t->start}.count()) - steppingUp + 1) *
                (t->kind == TaskKind::clamp || t->kind == TaskKind::reclamp ? paces(v, *t)
                                                                            : pace(v, *t));
            Given& given = all[{t->kind, t->pass, t->zone}];
            given.work += work;
            given.last = t;
        }
        for (const auto& [key, given] : all) {
            const auto& [kind, number, id] = key;
            const Pass* pass = quilt.pass(number);
            const Zone* zone = quilt.zone(id);
            if (pass == nullptr || (isOfZone(kind) && zone == nullptr))
                continue;
            const SeenTask* seen = isOfZone(kind) ? seenTask(kind) : nullptr;
            const int times = seen && seen->again && isPressedTwice(quilt, *zone) ? 2 : 1;
            const double asked = seen ? times * seen->secondsAPoint * double(zone->points.size())
                                      : secondsOfPass(*pass, kind);
            if (given.work < asked - 1e-6)
                report.add(where(quilt, *given.last) / "end",
                           quilt.label() + ", pass " + std::to_string(number) +
                               (id.empty() ? "" : ", zone " + id) + ": " + std::string{name(kind)} +
                               " is given " + figure(given.work) +
                               " s of work at pace 1; it takes " + figure(asked) + " s.");
        }
    }
}

namespace {

/// Seconds that a zone's points take at pace 1 from a place: half as long again where the arm alone
/// does not reach (common practice).
double secondsAt(const QuiltView& v, const Pass& pass, const Zone& zone, const StandingPlace& at,
                 const Helper& h, double each) {
    double out = 0;
    for (const PlacedPoint& p : zone.points) {
        const double away = v.quilt.surface.floor ? 0
                                                  : reachNeeded(pass.table, at.side, at.along,
                                                                {p.at.x, p.at.y, p.at.x, p.at.y});
        out += away > h.reach.in() + 1e-6 ? 1.5 * each : each;
    }
    return out;
}

/// One person alone takes so many times as long to lay, fold or shift (common practice).
constexpr double kAlone = 1.8;

/// What a task takes just so; nothing where it is shared, or where that is not known.
std::optional<double> lengthOf(const PlanView& v, const QuiltView& q, const Task& t) {
    const Pass* pass = q.pass(t.pass);
    if (pass == nullptr)
        return {};
    const double slowest = pace(v, t);
    if (isOfZone(t.kind)) {
        const Zone* zone = q.zone(t.zone);
        const SeenTask* seen = seenTask(t.kind);
        if (zone == nullptr || seen == nullptr || t.people.size() != 1 || t.places.size() != 1)
            return {};
        const Helper* h = v.helper(t.people.front());
        return h == nullptr ? std::optional<double>{}
                            : kStepUpToZone + secondsAt(q, *pass, *zone, t.places.front(), *h,
                                                        seen->secondsAPoint) /
                                                  slowest;
    }
    switch (t.kind) {
    case TaskKind::layBacking:
    case TaskKind::layBatting:
    case TaskKind::layTop:
    case TaskKind::shift:
    case TaskKind::foldBack:
    case TaskKind::foldForward:
        return secondsOfPass(*pass, t.kind) * (t.people.size() == 1 ? kAlone : 1) / slowest;
    case TaskKind::smooth:
    case TaskKind::checkUnderside:
    case TaskKind::handOver:
        return secondsOfPass(*pass, t.kind) / slowest;
    case TaskKind::cool:
    case TaskKind::settle:
        return secondsOfPass(*pass, t.kind);
    default:
        return {};
    }
}

} // namespace

// No task lasts longer, or less, than its work at that person's pace.
void crewLengths(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks) {
        const QuiltView* q = v.quilt(t.job);
        const auto asked = q == nullptr ? std::nullopt : lengthOf(v, *q, t);
        const auto lasts = double(Seconds{t.end - t.start}.count());
        if (asked && std::abs(lasts - *asked) > 1.01)
            report.add(where(v, t) / "end", "Task '" + t.id + "' lasts " + figure(lasts) +
                                                " s; its work takes " + figure(*asked) + " s.");
    }
}

// Setting up: the tables by the quickest, a quarter of an hour, or five minutes where they stand
// already; and two seconds a point by all, for a pin to be opened or the paper of a dot to be taken
// off. All of it common practice.
void crewSetUp(const PlanView& v, Report& report) {
    std::set<int> seen; // surfaces that stand already
    for (const QuiltView& q : v.quilts) {
        double lasts = 0, asked = seen.insert(q.quilt.surface.number).second ? 900 : 300;
        int parts = 0;
        const Task* last = nullptr;
        for (const Task* t : q.tasks())
            if (t->kind == TaskKind::setUp) {
                lasts += double(Seconds{t->end - t->start}.count());
                ++parts;
                last = t;
            }
        if (last == nullptr)
            continue;
        double quickest = 0, all = 0, points = 0;
        for (const std::string& who : last->people)
            if (const Helper* h = v.helper(who)) {
                quickest = std::max(quickest, h->pace);
                all += h->pace;
            }
        for (const Zone& z : q.quilt.zones)
            points += double(z.points.size());
        if (all <= 0)
            continue;
        asked = asked / quickest + 2 * points / all;
        if (std::abs(lasts - asked) > 1 + parts)
            report.add(where(q, *last) / "end", q.label() + ": setting up lasts " + figure(lasts) +
                                                    " s; it takes " + figure(asked) + " s.");
    }
}

void crewFinish(const PlanView& v, Report& report) {
    Seconds last{};
    for (const Task& t : v.plan.tasks)
        last = std::max(last, t.end);
    if (v.plan.finish != last)
        report.add(Pointer{} / "finish", "The plan is said to finish at " + clock(v.plan.finish) +
                                             "; the last task ends at " + clock(last) + ".");
    if (v.plan.finish < v.plan.finishBound)
        report.add(Pointer{} / "bounds/finish", "The plan finishes at " + clock(v.plan.finish) +
                                                    ", before what is said to be the earliest, " +
                                                    clock(v.plan.finishBound) + ".");
}

} // namespace bastewright::check
