#include "planners/crew/pass_work.h"

#include "plan/trade_times.h"
#include "planners/crew/slowest.h"
#include "planners/crew/step_times.h"

#include <algorithm>
#include <numeric>

namespace bastewright::crew {
namespace {

using namespace trade_times;

/// Two at the pace of the slower, or one alone, who takes 1.8 times as long.
double paceOfPair(std::span<const double> paces) {
    const double alone = paces.front() / kLayAlone;
    return paces.size() < 2 ? alone : std::max(alone, paces[1]);
}

double paceOfLift(std::span<const double> paces, std::size_t lifters) {
    const std::size_t n = std::min(lifters, paces.size());
    return n < 2 ? paceOfPair(paces) : paces[n - 1];
}

/// Steps that do not go with how many there are.
double stepsOf(const PassWork& w, std::span<const double> paces) {
    const double all = std::accumulate(paces.begin(), paces.end(), 0.0);
    return w.fixed + w.single / paces.front() + w.pair / paceOfPair(paces) +
           (w.shift > 0 ? w.shift / paceOfLift(paces, w.lifters) : 0) + w.opened / all;
}

/// How much longer than the others' even share the slowest of so many takes.
double slowestOf(std::size_t people) {
    static const std::vector<double> kFactors = [] {
        std::vector<double> out{1};
        for (std::size_t n = 1; n <= 64; ++n)
            out.push_back(middleOfSlowest(std::vector<double>(n, 1.0), spreadOfWork()));
        return out;
    }();
    return kFactors[std::min<std::size_t>(people, 64)];
}

} // namespace

bool fullZones(const PassCrew& crew, const Way& way) {
    return std::ranges::all_of(crew.zones, [&](const OwnedZone& z) {
        return z.zone.points.size() <= static_cast<std::size_t>(way.mostInZone);
    });
}

bool opensTheTable(const Given& given, const Block& block) {
    return std::ranges::none_of(
        given.quilts.begin(), given.quilts.begin() + block.job,
        [&](const QuiltPlan& q) { return q.surface.number == block.surface; });
}

void PassWork::add(const PassWork& other) {
    fixed += other.fixed;
    single += other.single;
    pair += other.pair;
    shift += other.shift;
    lifters = std::max(lifters, other.lifters);
    opened += other.opened;
    holds += other.holds;
    zones += other.zones;
    calls += other.calls;
    pressed += other.pressed;
    presses += other.presses;
}

PassWork passWork(const Given& given, const QuiltTable& table, const Block& block,
                  bool firstOnTheTable, const PassPlan* left) {
    const QuiltPlan& quilt = given.quilts[static_cast<std::size_t>(block.job)];
    const Pass& p = quilt.passes[block.pass];
    std::map<TaskKind, double> points; // of the kinds there are
    if (left)
        for (const Task& t : left->tasks) {
            if (given.situation.inHand.contains(t.id))
                continue;
            double& n = points[t.kind];
            for (const OwnedZone& z : left->crew.zones)
                if (t.pass == p.number && z.zone.id == t.zone)
                    n += double(z.zone.points.size());
        }
    const auto is = [&](TaskKind kind) { return left == nullptr || points.contains(kind); };
    const BastedPass& basted = table.basted(block.pass);
    const auto all = double(table.points(block.pass).size());
    const auto pointsOf = [&](TaskKind kind) {
        if (left)
            return is(kind) ? points.at(kind) : 0;
        return basted.instead == nullptr          ? all
               : &wayWith(kind) == basted.instead ? all - double(basted.pins)
                                                  : double(basted.pins);
    };
    PassWork out;
    out.room = static_cast<std::size_t>(std::max(1, roomFor(table.sides())));
    const std::vector<double> two{1, 1};
    using enum TaskKind;
    // Of setting up in parts the first has most of it: what is left after it is not counted.
    const auto begins = [&](const Task& t) {
        return t.id == taskId(block.job, p.number, {}, setUp);
    };
    if (block.pass == 0 && is(setUp) && (!left || std::ranges::any_of(left->tasks, begins))) {
        std::size_t ofQuilt = 0;
        for (std::size_t k = 0; k < quilt.passes.size(); ++k)
            ofQuilt += table.points(k).size();
        out.single += firstOnTheTable ? kSetUp : kSetUpNext;
        out.opened += kOpenPin * double(ofQuilt);
    }
    if (block.pass > 0 && is(shift)) {
        out.shift = shiftSeconds(p, two);
        out.lifters = static_cast<std::size_t>(std::max(1, p.liftPeople));
    }
    if (!p.pulled) {
        for (const TaskKind kind : {layBacking, layBatting, layTop})
            out.pair += is(kind) ? laySeconds(p, block.pass == 0, two) : 0;
        out.holds += is(clamp) ? kHold * holdsOf(p) : 0;
        out.holds += is(reclamp) ? kHold * clampsOf(p) : 0;
    }
    const auto zones = [&](TaskKind kind) {
        if (const double n = pointsOf(kind); n > 0) {
            out.zones += secondsAPoint(kind) * n;
            const double steppingUp =
                left && !fullZones(left->crew, wayWith(kind)) ? 0 : leastSteppingUp(kind);
            out.steppingUp = out.calls == 0 ? steppingUp : std::min(out.steppingUp, steppingUp);
            ++out.calls;
        }
    };
    std::vector<const Way*> ways;
    if (left)
        for (const OwnedZone& z : left->crew.zones)
            addWay(ways, given.session.jobs[static_cast<std::size_t>(block.job)], z.zone);
    else
        for (const Way* way : {basted.instead, basted.way})
            if (way != nullptr)
                ways.push_back(way);
    for (const WayStep* one : stepsOf(ways)) {
        const WayStep& step = *one;
        if (table.points(block.pass).empty() || (!step.ofZones() && !is(step.kind)))
            continue;
        switch (step.by) {
        case WayStep::By::zones:
            zones(step.kind);
            break;
        case WayStep::By::irons:
            out.pressed = step.seconds * pointsOf(step.kind);
            out.presses = out.pressed > 0 ? 1 : 0;
            out.irons = static_cast<std::size_t>(std::max(1, given.session.setting.room.irons));
            break;
        case WayStep::By::palm:
            out.single += step.seconds;
            break;
        case WayStep::By::fold:
            out.pair += stepSeconds(step, p, two);
            break;
        case WayStep::By::nobody:
            out.fixed += step.seconds;
            break;
        }
    }
    out.single += is(checkUnderside) ? kUnderside : 0;
    if (block.pass + 1 == quilt.passes.size())
        out.single += is(handOver) ? kHandOver : 0;
    return out;
}

double aboutSeconds(const PassWork& w, std::span<const double> paces) {
    const auto shared = [&](std::size_t most, double work, int calls, double steppingUp) {
        if (work <= 0)
            return 0.0;
        const auto who = paces.first(std::min(most, paces.size()));
        double all = 0, turns = 0;
        for (const double pace : who) {
            all += pace;
            turns += withSteppingUp(pace, steppingUp);
        }
        return std::max(work / all + calls * kStepUpToZone, work / turns) * slowestOf(who.size());
    };
    return stepsOf(w, paces) + shared(w.room, w.holds, 0, 0) +
           shared(w.room, w.zones, w.calls, w.steppingUp) +
           shared(w.irons, w.pressed, w.presses, 0);
}

double leastSeconds(const PassWork& w, std::span<const double> paces, const Rate& rate) {
    const auto room = paces.first(std::min(w.room, paces.size()));
    const double all = std::accumulate(room.begin(), room.end(), 0.0);
    const auto irons = paces.first(std::min(w.irons, paces.size()));
    const double ironing = std::accumulate(irons.begin(), irons.end(), 0.0);
    return stepsOf(w, paces) + w.holds / rate.plain +
           std::max((w.zones + w.calls * kStepUpToZone * all) / rate.plain,
                    w.zones / rate.withSteppingUp) +
           (w.pressed > 0 ? w.pressed / ironing + w.presses * kStepUpToZone : 0);
}

} // namespace bastewright::crew
