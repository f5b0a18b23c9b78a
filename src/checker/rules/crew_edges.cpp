#include "checker/geometry/standing_reach.h"
#include "checker/rules/quilt_side.h"
#include "checker/rules/rules.h"
#include "checker/task_traits.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <map>

namespace bastewright::check {
namespace {

const Pass* passOf(const PlanView& v, const Task& t) {
    const QuiltView* quilt = v.quilt(t.job);
    return quilt == nullptr ? nullptr : quilt->pass(t.pass);
}

/// Somebody at a side of a surface for a while.
struct Standing {
    const Task* task;
    std::string who;
    StandingPlace at;
};

} // namespace

void crewPlaces(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks) {
        if (isOfZone(t.kind) ? t.places.size() != 1
                             : !t.places.empty() && t.places.size() != t.people.size())
            report.add(where(v, t) / "places",
                       label(t) + " has " + std::to_string(t.places.size()) + " places for " +
                           std::to_string(t.people.size()) + " people.");
        const Pass* pass = passOf(v, t);
        if (pass == nullptr)
            continue;
        const auto& closed = v.quilt(t.job)->quilt.surface.closed;
        for (const StandingPlace& at : t.places) {
            const Unit unit = v.plan.unit;
            if (std::ranges::find(closed, at.side) != closed.end())
                report.add(where(v, t).in("places", t.places, at) / "side",
                           label(t) + ": nobody can stand at the " + std::string{name(at.side)} +
                               ", it is closed.");
            if (!extent(pass->table, at.side).contains(at.along))
                report.add(where(v, t).in("places", t.places, at),
                           label(t) + ": the place reaches beyond the " +
                               std::string{name(at.side)} + " side of the table.");
            if (at.along.size() < standingWidth(pass->table, at.side) - kHalving)
                report.add(where(v, t).in("places", t.places, at),
                           label(t) + ": the place is " + figure(at.along.size(), unit) +
                               " wide; one person takes " +
                               figure(standingWidth(pass->table, at.side), unit) + ".");
        }
    }
}

namespace {

/// Works at zones of that pass in the same call, there before it and after it.
bool isThere(const PlanView& v, const Task& t, const Helper& h) {
    const Setting& s = v.session.setting;
    const bool works = std::ranges::any_of(v.plan.tasks, [&](const Task& o) {
        return o.job == t.job && o.pass == t.pass && o.kind == t.kind &&
               std::ranges::find(o.people, h.name) != o.people.end();
    });
    return works && !h.until && h.breaks.empty() && s.breaks.empty();
}

/// True where somebody could stand at a side in nobody's way and reach all of a task's zone.
bool canStandAt(const PlanView& v, const Task& t, const Pass& pass, Side side, const Helper& h) {
    const Zone* zone = v.quilt(t.job)->zone(t.zone);
    const auto& closed = v.quilt(t.job)->quilt.surface.closed;
    if (zone == nullptr || std::ranges::find(closed, side) != closed.end())
        return false;
    const Length room = standingWidth(pass.table, side);
    const Interval whole = extent(pass.table, side), work = extent(zone->area, side);
    std::vector<Interval> taken;
    std::vector<Length> from{whole.lo, whole.hi - room, work.lo, work.hi - room,
                             work.middle() - room / 2};
    for (const Task& o : v.plan.tasks)
        if (o.job == t.job && o.pass == t.pass && o.kind == t.kind && o.people != t.people &&
            o.places.size() == 1 && o.places.front().side == side) {
            taken.push_back(o.places.front().along);
            from.push_back(taken.back().hi);
            from.push_back(taken.back().lo - room);
        }
    return std::ranges::any_of(from, [&](Length lo) {
        const Interval at{lo, lo + room};
        return whole.contains(at) &&
               std::ranges::none_of(taken, [&](const Interval& o) { return o.overlaps(at); }) &&
               (v.quilt(t.job)->quilt.surface.floor ||
                std::ranges::all_of(zone->points, [&](const PlacedPoint& p) {
                    return reachNeeded(pass.table, side, at, {p.at.x, p.at.y, p.at.x, p.at.y}) <=
                           reachOf(h).in();
                }));
    });
}

/// True where nobody else of those who work in this call could stand there in nobody's way, may do
/// the work and reaches all of it: then a wish for a side gives way.
bool nobodyElse(const PlanView& v, const Task& t, const Pass& pass) {
    const StandingPlace at = t.places.front();
    const QuiltView& quilt = *v.quilt(t.job);
    const auto reaches = [&](const Helper& h, const Task& task) {
        const Zone* zone = quilt.zone(task.zone);
        return quilt.quilt.surface.floor || zone == nullptr ||
               std::ranges::all_of(zone->points, [&](const PlacedPoint& p) {
                   return reachNeeded(pass.table, at.side, at.along,
                                      {p.at.x, p.at.y, p.at.x, p.at.y}) <=
                          (reachOf(h) + kFine).in();
               });
    };
    return std::ranges::none_of(v.session.setting.helpers, [&](const Helper& h) {
        if (h.name == t.people.front() || h.side || h.seated || !h.pins || !isThere(v, t, h) ||
            !reaches(h, t))
            return false;
        // What the same person does there could go with it, as far as it is within reach.
        return std::ranges::none_of(v.plan.tasks, [&](const Task& o) {
            return &o != &t && o.job == t.job && o.pass == t.pass && o.kind == t.kind &&
                   o.people != std::vector{h.name} && o.places.size() == 1 &&
                   o.places.front().side == at.side && o.places.front().along.overlaps(at.along) &&
                   (o.people != t.people || !reaches(h, o));
        });
    });
}

} // namespace

void crewReach(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks) {
        const Pass* pass = passOf(v, t);
        if (!isOfZone(t.kind) || pass == nullptr || t.people.size() != 1 || t.places.size() != 1)
            continue;
        const QuiltView& quilt = *v.quilt(t.job);
        const Zone* zone = quilt.zone(t.zone);
        const Helper* h = v.helper(t.people.front());
        if (zone == nullptr || h == nullptr)
            continue;
        const StandingPlace at = t.places.front();
        const Side kept =
            h->side ? quiltSide(*h->side, quilt.quilt.surface.quiltLengthAlongLength) : at.side;
        if (kept != at.side && (canStandAt(v, t, *pass, kept, *h) || !nobodyElse(v, t, *pass)))
            report.add(where(v, t) / "places/0/side",
                       label(t) + ": " + h->name + " stands at the quilt's " +
                           std::string{name(at.side)} + ", which is not the side they keep to.");
        if (quilt.quilt.surface.floor)
            continue;
        // Every point for itself: they step along their place.
        double needed = 0;
        for (const PlacedPoint& p : zone->points)
            needed = std::max(needed, reachNeeded(pass->table, at.side, at.along,
                                                  {p.at.x, p.at.y, p.at.x, p.at.y}));
        const Length most = reachOf(*h);
        if (needed > (most + kFine).in())
            report.add(where(v, t) / "places/0",
                       label(t) + ": zone " + t.zone + " needs a reach of " +
                           figure(Length::nearestInches(needed), v.plan.unit) + " from there; " +
                           h->name + " has " + figure(most, v.plan.unit) + ".");
    }
}

void crewEdges(const PlanView& v, Report& report) {
    std::map<std::pair<int, Side>, std::vector<Standing>> sides;
    for (const Task& t : v.plan.tasks) {
        const QuiltView* quilt = v.quilt(t.job);
        if (quilt == nullptr || t.places.size() != t.people.size())
            continue;
        for (std::size_t i = 0; i < t.places.size(); ++i)
            sides[{quilt->quilt.surface.number, t.places[i].side}].push_back(
                {&t, t.people[i], t.places[i]});
    }
    for (auto& [side, all] : sides) {
        std::ranges::stable_sort(all, {}, [](const Standing& s) { return s.task->start; });
        for (auto a = all.begin(); a != all.end(); ++a)
            for (auto b = std::next(a); b != all.end(); ++b) {
                if (b->task->start >= a->task->end)
                    break;
                if (a->who != b->who && a->task->job == b->task->job &&
                    a->at.along.overlaps(b->at.along))
                    report.add(where(v, *b->task) / "places",
                               a->who + " in '" + a->task->id + "' and " + b->who + " in '" +
                                   b->task->id + "' stand at the same place of the " +
                                   std::string{name(side.second)} + " side at " +
                                   clock(b->task->start) + ".");
            }
    }
}

// One surface takes one quilt at a time, in the order of the quilts.
void crewSurfaces(const PlanView& v, Report& report) {
    std::map<int, const Task*> lastOn; // by surface: the task that ends last of the quilts so far
    for (const QuiltView& quilt : v.quilts) {
        const auto tasks = quilt.tasks();
        if (tasks.empty())
            continue;
        const Task* first = *std::ranges::min_element(tasks, {}, &Task::start);
        const Task* last = *std::ranges::max_element(tasks, {}, &Task::end);
        const Task*& before = lastOn[quilt.quilt.surface.number];
        if (before != nullptr && before->end > first->start)
            report.add(where(v, *first) / "start",
                       quilt.label() + " begins with '" + first->id + "' at " +
                           clock(first->start) + ", while surface " +
                           std::to_string(quilt.quilt.surface.number) + " is taken by '" +
                           before->id + "' until " + clock(before->end) + ".");
        if (before == nullptr || last->end > before->end)
            before = last;
    }
}

} // namespace bastewright::check
