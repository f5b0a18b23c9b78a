#include "checker/geometry/distance.h"
#include "checker/rest/rest_view.h"
#include "checker/rules/tables_left.h"
#include "checker/rules/tasks_asked.h"
#include "checker/rules/told.h"
#include "checker/task_traits.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"
#include "plan/call.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <tuple>

namespace bastewright::check {
namespace {

const Task* taskNamed(const Plan& plan, std::string_view id) {
    const auto at = std::ranges::find(plan.tasks, id, &Task::id);
    return at == plan.tasks.end() ? nullptr : &*at;
}

std::vector<PlacedPoint> pointsOfPass(const QuiltPlan& quilt, int pass) {
    std::vector<PlacedPoint> out;
    for (const Zone& z : quilt.zones)
        if (z.pass == pass)
            out.insert(out.end(), z.points.begin(), z.points.end());
    std::ranges::sort(out);
    return out;
}

// What is done is in the plan as it was done, and over by now.
void restDone(const RestView& v, Report& report) {
    for (const Task& was : v.before.plan.tasks) {
        if (!v.isDone(was))
            continue;
        const Task* is = taskNamed(v.plan.plan, was.id);
        if (is == nullptr)
            report.add(Pointer{} / "tasks", label(was) + " is done, and the plan has left it out.");
        else if (is->kind != was.kind || is->job != was.job || is->pass != was.pass ||
                 is->zone != was.zone || is->people != was.people || is->places != was.places)
            report.add(where(v.plan, *is), label(was) + " is done, and the plan has changed it.");
        else if (is->end > v.facts.now || is->start > is->end)
            report.add(where(v.plan, *is) / "end",
                       label(was) + " is done; in the plan it ends at " + clock(is->end) +
                           ", and it is " + clock(v.facts.now) + ".");
    }
}

// Zones of which something is done stay as they are.
void restBegun(const RestView& v, Report& report) {
    for (const auto& [at, steps] : v.facts.begun) {
        const auto& [job, id] = at;
        const QuiltView* was = v.before.quilt(job);
        const QuiltView* is = v.plan.quilt(job);
        const Zone* zone = was == nullptr ? nullptr : was->zone(id);
        if (zone == nullptr || is == nullptr)
            continue;
        const Zone* now = is->zone(id);
        if (now == nullptr || *now != *zone)
            report.add(now == nullptr ? where(*is) / "zones" : where(*is, *now),
                       is->label() + ": zone " + id + " is begun, and the plan has " +
                           (now == nullptr ? "left it out." : "changed it."));
    }
}

// A pass of which something is done stays where it lies, with all its points; what is basted cannot
// be basted otherwise.
void restBasted(const RestView& v, Report& report) {
    for (const QuiltView& was : v.before.quilts) {
        const QuiltView* is = v.plan.quilt(was.index);
        for (const Pass& p : was.quilt.passes) {
            if (is == nullptr || !v.isBegun(was.index, p.number))
                continue;
            const Pass* now = is->pass(p.number);
            const std::string what = label(*is, p);
            const char* differs = now == nullptr ? "is left out"
                                  : std::tie(now->table, now->field) != std::tie(p.table, p.field)
                                      ? "lies elsewhere"
                                  : now->fresh != p.fresh   ? "bastes another area"
                                  : now->pulled != p.pulled ? "is pulled across, or is not"
                                  : now->holds != p.holds   ? "is held otherwise"
                                  : now->rolls != p.rolls   ? "is rolled otherwise"
                                                            : nullptr;
            if (differs != nullptr)
                report.add(now == nullptr ? where(*is) / "passes" : where(*is, *now),
                           what + " is begun, and in the plan it " + differs + ".");
            if (now == nullptr)
                continue;
            if (pointsOfPass(is->quilt, p.number) != pointsOfPass(was.quilt, p.number))
                report.add(where(*is) / "zones",
                           what + " is begun, and the plan has other points in it.");
        }
    }
}

// Nothing new is planned for a time that is over.
void restNow(const RestView& v, Report& report) {
    for (const Task& t : v.plan.plan.tasks)
        if (!v.isDone(t) && t.start < v.facts.now)
            report.add(where(v.plan, t) / "start", label(t) + " is to begin at " + clock(t.start) +
                                                       "; it is " + clock(v.facts.now) + ".");
}

// What is in hand, and stays with those who have it, lasts no longer than four times what it was
// planned for: so far a learnt pace goes at most (docs/computation/live.md).
void restInHand(const RestView& v, Report& report) {
    for (const Task& t : v.open.plan.tasks) {
        const Task* was = v.isInHand(t) ? taskNamed(v.before.plan, t.id) : nullptr;
        if (was != nullptr && t.end - t.start > 4 * (was->end - was->start) + Seconds{1})
            report.add(where(v.open, t) / "end",
                       label(t) + " is in hand and is to go on until " + clock(t.end) + ".");
    }
}

// Closing early shifts the layers: what is closed was smoothed after all its pins were placed, or
// is smoothed before.
void restSmoothed(const RestView& v, Report& report) {
    for (const Task& close : v.open.plan.tasks) {
        if (close.kind != TaskKind::closePins)
            continue;
        const auto placed = std::ranges::find_if(v.open.plan.tasks, [&](const Task& t) {
            return t.job == close.job && t.zone == close.zone && t.kind == TaskKind::placeOpen;
        });
        const bool toPlace = placed != v.open.plan.tasks.end();
        const bool smoothed = std::ranges::any_of(v.plan.plan.tasks, [&](const Task& t) {
            if (t.job != close.job || t.pass != close.pass || t.kind != TaskKind::smooth)
                return false;
            return v.isDone(t) ? !toPlace
                               : t.end <= close.start && (!toPlace || t.start >= placed->end);
        });
        if (!smoothed)
            report.add(where(v.open, close) / "start",
                       label(close) + " closes zone " + close.zone + " at " + clock(close.start) +
                           ", with no smoothing between placing and closing.");
    }
}

// What comes after a call of its pass waits for something: else it could be ticked too early.
void restWaits(const RestView& v, Report& report) {
    for (const Task& t : v.open.plan.tasks) {
        if (!t.after.empty())
            continue;
        const auto before = std::ranges::find_if(v.open.plan.tasks, [&](const Task& o) {
            return o.job == t.job && o.pass == t.pass && o.kind != t.kind && o.end <= t.start;
        });
        if (before != v.open.plan.tasks.end())
            report.add(where(v.open, t) / "after", label(t) + " waits for nothing, though '" +
                                                       before->id + "' comes before it.");
    }
}

/// How often this work at a zone need not be there: it is left out, or the work was done at a time
/// when nobody was planned for it.
int mayLack(const RestView& v, const QuiltView& q, const Zone& zone, TaskKind kind) {
    constexpr int kTwice = 2; // from the back too
    if (v.facts.setAside.contains({q.index, zone.id}))
        return kTwice;
    const auto begun = v.facts.begun.find({q.index, zone.id});
    if (begun == v.facts.begun.end())
        return 0;
    int steps = 0, step = 0;
    for (const SeenTask& task : seenWay(q.job, zone).tasks)
        if (task.of == SeenTask::Of::zone) {
            if (task.kind == kind)
                step = steps;
            ++steps;
        }
    return begun->second > steps ? kTwice : step < begun->second ? 1 : 0;
}

/// All zones of a pass are done, and nothing of it was open: it is off the table.
bool isBehind(const RestView& v, const QuiltView& q, const Pass& pass) {
    return std::ranges::all_of(q.quilt.zones,
                               [&](const Zone& z) {
                                   const auto steps = std::ranges::count(
                                       seenWay(q.job, z).tasks, SeenTask::Of::zone, &SeenTask::of);
                                   const auto begun = v.facts.begun.find({q.index, z.id});
                                   return z.pass != pass.number || z.points.empty() ||
                                          (begun != v.facts.begun.end() && begun->second >= steps);
                               }) &&
           std::ranges::all_of(v.before.plan.tasks, [&](const Task& t) {
               return t.job != q.index || t.pass != pass.number || v.isDone(t);
           });
}

// What is not done is in the plan: nothing of a zone or a pass is forgotten.
void restTasks(const RestView& v, Report& report) {
    if (v.plan.stopped() || v.endsWithPins())
        return;
    for (const QuiltView& q : v.plan.quilts) {
        std::set<int> works; ///< passes of which some zone is not left out
        for (const Zone& z : q.quilt.zones)
            if (!z.points.empty() && !v.facts.setAside.contains({q.index, z.id}))
                works.insert(z.pass);
        tasksAsked(
            q,
            {.pass = [&](const Pass& p) { return !works.contains(p.number) || isBehind(v, q, p); },
             .ofZone = [&](const Zone& z, TaskKind kind) { return mayLack(v, q, z, kind); }},
            report);
    }
}

// What is still to be laid out stands on tables that are there, or the plan says that they are not:
// quilts on one surface follow one another, so the most of any counts.
void restTables(const RestView& v, Report& report) {
    const auto left = tablesLeft(v.plan, [&](const QuiltView& q) {
        return std::ranges::any_of(q.quilt.passes,
                                   [&](const Pass& p) { return !v.isBegun(q.index, p.number); }) &&
               std::ranges::any_of(v.open.plan.tasks, [&](const Task& t) {
                   return t.job == q.index && !v.isBegun(q.index, t.pass);
               });
    });
    const auto& findings = v.plan.plan.findings;
    const bool told =
        std::ranges::find(findings, Finding::Kind::tablesGone, &Finding::kind) != findings.end();
    for (const auto& [size, count] : left)
        if (count < 0 && !told)
            report.add(whereOfAll(v.plan, "surface/tables"),
                       "What is left stands on " + std::to_string(-count) +
                           " more tables than there are of " +
                           figure(size.first, v.plan.plan.unit) + " by " +
                           figure(size.second, v.plan.plan.unit) + ".");
}

// What the first plan bought, cut and sewed is as it was: layers, backing, batting, rolls for the
// machine, and what was to be brought.
void restSame(const RestView& v, Report& report) {
    for (const QuiltView& was : v.before.quilts) {
        const QuiltView* is = v.plan.quilt(was.index);
        if (is == nullptr)
            continue;
        const QuiltPlan &a = was.quilt, &b = is->quilt;
        const char* differs = a.layers != b.layers               ? "layers"
                              : a.backing != b.backing           ? "backing"
                              : a.batting != b.batting           ? "batting"
                              : a.machineRolls != b.machineRolls ? "machine_rolls"
                                                                 : nullptr;
        if (differs != nullptr)
            report.add(where(*is) / differs,
                       is->label() + ": backing, batting or layers are not those that lie there.");
    }
    if (v.plan.plan.supplies != v.before.plan.supplies)
        report.add(Pointer{} / "supplies", "What was to be brought is not what it was.");
}

// Where rows are told anew, every point of a pass that is new is one of them or was there before;
// those that are new are half the spacing apart.
void restRows(const RestView& v, Report& report) {
    for (const QuiltView& q : v.plan.quilts) {
        if (!v.hasNewRows(q.index) || !q.quilt.rows)
            continue;
        const auto among = [](const std::vector<Point>& all, Point p) {
            const auto from = std::ranges::lower_bound(all, Point{p.x - kHalving, p.y - kHalving});
            for (auto i = from; i != all.end() && i->x <= p.x + kHalving; ++i)
                if (abs(i->y - p.y) <= kHalving)
                    return true;
            return false;
        };
        std::vector<Point> told = toldByRows(*q.quilt.rows), before, fresh;
        for (const Zone& z : v.before.quilt(q.index)->quilt.zones)
            for (const PlacedPoint& p : z.points)
                before.push_back(p.at);
        std::ranges::sort(told);
        std::ranges::sort(before);
        for (const Zone& z : q.quilt.zones)
            for (const PlacedPoint& p : z.points) {
                if (v.isBegun(q.index, z.pass) || among(before, p.at))
                    continue;
                if (!among(told, p.at))
                    report.add(where(q, z, p), q.label() + ", zone " + z.id + ": no row tells of " +
                                                   "the point at " + place(p.at, v.plan.plan.unit) +
                                                   ".");
                fresh.push_back(p.at);
            }
        std::ranges::sort(fresh);
        const Length least = q.job.basting.spacing / 2;
        if (q.tells(Finding::Kind::pinsCrowded) != nullptr)
            continue;
        for (auto a = fresh.begin(); a != fresh.end(); ++a)
            for (auto b = std::next(a); b != fresh.end() && b->x - a->x < least; ++b)
                if (distance(*a, *b) < least - kFine)
                    report.add(where(q) / "zones", q.label() + ": the new points at " +
                                                       place(*a, v.plan.plan.unit) + " and " +
                                                       place(*b, v.plan.plan.unit) +
                                                       " are nearer than half the spacing.");
    }
}

// What is said of the people is so of those who are there or still to come.
void restSaid(const RestView& v, Report& report) {
    if (v.open.plan.tasks.empty())
        return;
    const auto says = [&](Finding::Kind kind) {
        return std::ranges::find(v.plan.plan.findings, kind, &Finding::kind) !=
               v.plan.plan.findings.end();
    };
    const auto nobody = [&](auto can) {
        return std::ranges::none_of(v.open.session.setting.helpers, can);
    };
    if (says(Finding::Kind::nobodyLifts) != nobody(liftsWell))
        report.add(Pointer{} / "findings", says(Finding::Kind::nobodyLifts)
                                               ? "Nobody is said to lift, and somebody does."
                                               : "Nobody lifts, and the plan does not say so.");
    if (says(Finding::Kind::nobodyBends) != nobody(looksBelow))
        report.add(Pointer{} / "findings",
                   says(Finding::Kind::nobodyBends)
                       ? "Nobody is said to look underneath, and somebody does."
                       : "Nobody looks underneath, and the plan does not say so.");
}

// Early, middle and late are in this order, from now on, and no farther from the finish than a
// third of what is left (an estimate: people differ by about a sixth).
void restRange(const RestView& v, Report& report) {
    const Plan& plan = v.plan.plan;
    if (v.open.plan.tasks.empty())
        return;
    const FinishRange& r = plan.range;
    const auto left = static_cast<double>((plan.finish - v.facts.now).count());
    if (r.early > r.middle || r.middle > r.late || (r.early < v.facts.now && !v.endsWithPins()) ||
        std::abs(static_cast<double>((r.middle - plan.finish).count())) > left / 3 + 60)
        report.add(Pointer{} / "finish_range", "The plan finishes at " + clock(plan.finish) +
                                                   "; it is said to lie between " + clock(r.early) +
                                                   " and " + clock(r.late) + ", the middle at " +
                                                   clock(r.middle) + ".");
}

constexpr std::array kRulesOfRest{
    RuleOfRest{"rest.done", "what is done stays as it was done", restDone},
    RuleOfRest{"rest.begun", "a zone that is begun stays as it is", restBegun},
    RuleOfRest{"rest.basted", "a pass that is begun stays where it lies", restBasted},
    RuleOfRest{"rest.now", "nothing new begins in the past", restNow},
    RuleOfRest{"rest.tasks", "everything that is left has its tasks", restTasks},
    RuleOfRest{"rest.pins", "pins that are missing are said to be", restPins},
    RuleOfRest{"rest.with",
               "dots stand in for pins in passes that are not begun, where the pins in the box do "
               "not last, and in no more than that",
               restWith},
    RuleOfRest{"rest.tables", "what is left stands on tables that are there", restTables},
    RuleOfRest{"rest.same", "what was bought and sewn is as it was", restSame},
    RuleOfRest{"rest.range", "the finish lies between early and late, from now on", restRange},
    RuleOfRest{"rest.rows", "points that are new are told of, and half the spacing apart",
               restRows},
    RuleOfRest{"rest.said", "what is said of the people is so of those who are there", restSaid},
    RuleOfRest{"rest.in-hand", "what is in hand lasts no more than four times as planned",
               restInHand},
    RuleOfRest{"rest.smoothed", "what is closed was smoothed after its pins were placed",
               restSmoothed},
    RuleOfRest{"rest.waits", "a task waits for something that is not done", restWaits}};

} // namespace

std::span<const RuleOfRest> rulesOfRest() {
    return kRulesOfRest;
}

} // namespace bastewright::check
