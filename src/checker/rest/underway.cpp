#include "checker/underway.h"

#include "checker/rest/rest_view.h"
#include "checker/rule.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <tuple>

namespace bastewright::check {
namespace {

/// Who is there from now on, by hours that are still to come: who is at the table is there already,
/// and stays where their hours are over; who is not and should be is gone.
Session whoIsThere(Session session, const Underway& facts) {
    const auto begins = session.setting.start.sinceMidnight;
    auto& helpers = session.setting.helpers;
    std::erase_if(helpers, [&](const Helper& h) {
        return !facts.present.contains(h.name) &&
               (!h.from || Seconds{h.from->sinceMidnight - begins} <= facts.now);
    });
    for (Helper& h : helpers) {
        if (!facts.present.contains(h.name))
            continue;
        h.from = {};
        if (h.until && Seconds{h.until->sinceMidnight - begins} <= facts.now)
            h.until = {};
    }
    return session;
}

/// Of a plan what is not done; a pass of which nothing is left has nobody's places any more.
Plan openPart(Plan plan, const Underway& facts) {
    std::erase_if(plan.tasks, [&](const Task& t) { return facts.done.contains(t.id); });
    for (Task& t : plan.tasks)
        std::erase_if(t.after, [&](const std::string& id) { return facts.done.contains(id); });
    std::erase_if(plan.breaks, [&](const PlannedBreak& b) { return b.end <= facts.now; });
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        for (Pass& p : plan.quilts[q].passes)
            if (std::ranges::none_of(plan.tasks, [&](const Task& t) {
                    return t.job == static_cast<int>(q) && t.pass == p.number;
                }))
                p.stretches.clear();
    return plan;
}

/// Of what is open the passes of which nothing is done, as far as anything is planned for them.
Plan newPart(Plan plan, const RestView& rest) {
    const auto isNew = [&](int quilt, int pass) {
        return !rest.isBegun(quilt, pass) && !rest.isPulledWithBegun(quilt, pass) &&
               std::ranges::any_of(rest.open.plan.tasks,
                                   [&](const Task& t) { return t.job == quilt && t.pass == pass; });
    };
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        std::erase_if(plan.quilts[q].passes,
                      [&](const Pass& p) { return !isNew(static_cast<int>(q), p.number); });
    std::erase_if(plan.tasks, [&](const Task& t) { return !isNew(t.job, t.pass); });
    return plan;
}

/// Of what is open what cannot be in hand, nor any other part of it.
Plan untouchedPart(Plan plan, const RestView& rest) {
    using Part = std::tuple<int, TaskKind, int, std::string>; ///< what several tasks may share
    const auto partOf = [](const Task& t) {
        return Part{t.job, t.kind, t.kind == TaskKind::setUp ? 1 : t.pass, t.zone};
    };
    std::set<Part> touched;
    for (const Task& t : rest.plan.plan.tasks)
        if (rest.isDone(t) || rest.isInHand(t))
            touched.insert(partOf(t));
    // What was done when nobody was planned for it.
    for (const auto& [at, steps] : rest.facts.begun)
        if (const QuiltView* q = rest.before.quilt(at.first))
            if (const Zone* zone = q->zone(at.second)) {
                int step = 0;
                for (const SeenTask& task : seenWay(q->job, *zone).tasks)
                    if (task.of == SeenTask::Of::zone && step++ < steps)
                        touched.insert({at.first, task.kind, zone->pass, zone->id});
            }
    std::erase_if(plan.tasks, [&](const Task& t) { return touched.contains(partOf(t)); });
    return plan;
}

bool liesOn(const Pass& pass, const SurfacePlan& surface) {
    const Length width = pass.table.width(), length = pass.table.length();
    return surface.floor || std::pair{width, length} == std::pair{surface.length, surface.width} ||
           std::pair{width, length} == std::pair{surface.width, surface.length};
}

/// The surfaces of quilts of which a pass that is begun lies on another than the plan has for what
/// is left. Where that was so in the plan in force already, nobody knows any more which sides of it
/// are closed.
std::map<int, SurfacePlan> movedQuilts(const RestView& rest) {
    std::map<int, SurfacePlan> out;
    for (const QuiltView& was : rest.before.quilts) {
        const QuiltView* is = rest.plan.quilt(was.index);
        if (is == nullptr)
            continue;
        for (const Pass& p : is->quilt.passes) {
            if (!rest.isBegun(was.index, p.number) ||
                std::ranges::none_of(rest.open.plan.tasks, [&](const Task& t) {
                    return t.job == was.index && t.pass == p.number;
                }))
                continue;
            SurfacePlan surface = was.quilt.surface;
            if (surface == is->quilt.surface && liesOn(p, surface))
                continue;
            if (!liesOn(p, surface))
                surface.closed.clear();
            out.emplace(was.index, std::move(surface));
        }
    }
    return out;
}

/// Of a part of the plan the tasks of passes that are begun and lie on the surface they had before,
/// or all others. What comes once the quilt is turned over is done where it ends.
Plan partAt(Plan part, const RestView& rest, const std::map<int, SurfacePlan>& moved, bool former) {
    std::map<int, Seconds> turned;
    for (const Task& t : part.tasks)
        if (t.kind == TaskKind::turnOver)
            turned.emplace(t.job, t.start);
    std::erase_if(part.tasks, [&](const Task& t) {
        const auto turn = turned.find(t.job);
        const bool there = moved.contains(t.job) &&
                           (rest.isBegun(t.job, t.pass) || rest.isPulledWithBegun(t.job, t.pass)) &&
                           t.kind != TaskKind::handOver &&
                           (turn == turned.end() || t.start < turn->second);
        return there != former;
    });
    if (former)
        for (const auto& [job, surface] : moved)
            part.quilts[static_cast<std::size_t>(job)].surface = surface;
    return part;
}

} // namespace

namespace {

bool areSame(std::vector<std::string> a, std::vector<std::string> b) {
    std::ranges::sort(a);
    std::ranges::sort(b);
    return a == b;
}

} // namespace

bool RestView::isBegun(int quilt, int pass) const {
    const QuiltView* q = before.quilt(quilt);
    return q != nullptr &&
           (std::ranges::any_of(before.plan.tasks,
                                [&](const Task& t) {
                                    return t.job == quilt && t.pass == pass &&
                                           t.kind != TaskKind::setUp && isDone(t) &&
                                           !facts.setAside.contains({quilt, t.zone});
                                }) ||
            std::ranges::any_of(q->quilt.zones, [&](const Zone& z) {
                return z.pass == pass && !z.points.empty() && facts.begun.contains({quilt, z.id});
            }));
}

bool RestView::isPulledWithBegun(int quilt, int pass) const {
    const QuiltView* was = before.quilt(quilt);
    const QuiltView* is = plan.quilt(quilt);
    for (int p = pass; was != nullptr && is != nullptr; --p) {
        if (isBegun(quilt, p))
            return true;
        const Pass* one = was->pass(p);
        const Pass* two = is->pass(p);
        if (one == nullptr || two == nullptr || !one->pulled || one->table != two->table)
            return false;
    }
    return false;
}

bool RestView::isInHand(const Task& t) const {
    const auto was = std::ranges::find(before.plan.tasks, t.id, &Task::id);
    return was != before.plan.tasks.end() && areSame(was->people, t.people) &&
           std::ranges::all_of(was->after,
                               [&](const std::string& id) { return facts.done.contains(id); });
}

bool RestView::waits(int quilt, const Zone& zone) const {
    return !facts.begun.contains({quilt, zone.id}) && !facts.setAside.contains({quilt, zone.id});
}

std::int64_t RestView::pinsToPlace() const {
    std::int64_t out = 0;
    for (const QuiltView& q : plan.quilts)
        for (const Zone& z : q.quilt.zones)
            if (seenWay(q.job, z).fromBox && waits(q.index, z))
                out += std::ssize(z.points);
    return out;
}

bool RestView::mayBeBastedOtherwise(int quilt, int pass) const {
    const QuiltView* was = before.quilt(quilt);
    return was == nullptr ||
           (std::ranges::none_of(before.plan.tasks,
                                 [&](const Task& t) {
                                     return t.job == quilt && t.pass == pass && !t.zone.empty() &&
                                            std::ranges::all_of(t.after, [&](const auto& id) {
                                                return facts.done.contains(id);
                                            });
                                 }) &&
            std::ranges::all_of(was->quilt.zones, [&](const Zone& z) {
                return z.pass != pass || z.points.empty() || waits(quilt, z);
            }));
}

bool RestView::hasNewRows(int quilt) const {
    const QuiltView* was = before.quilt(quilt);
    const QuiltView* is = plan.quilt(quilt);
    return was != nullptr && is != nullptr &&
           (was->quilt.rows != is->quilt.rows || was->quilt.blocks != is->quilt.blocks);
}

bool RestView::hasNewRows() const {
    return std::ranges::any_of(plan.quilts,
                               [&](const QuiltView& q) { return hasNewRows(q.index); });
}

bool RestView::endsWithPins() const {
    return std::ranges::any_of(plan.plan.findings, [](const Finding& f) {
        return f.kind == Finding::Kind::pinsShort && f.level == Finding::Level::note;
    });
}

} // namespace bastewright::check

namespace bastewright {

Findings checkRest(const Session& given, const Plan& plan, const Underway& facts) {
    using namespace check;
    Session session = given;
    if (session.setting.helpers.empty())
        session.setting.helpers.emplace_back().name = "Helper 1";
    const Session there = whoIsThere(session, facts);
    const Plan openTasks = openPart(plan, facts);
    const PlanView whole{session, plan}, before{session, *facts.before},
        open{there, openTasks, plan};
    const RestView rest{whole, before, open, facts};
    const Plan newPasses = newPart(openTasks, rest);
    const Plan formerPasses = newPart(openPart(*facts.before, facts), rest);
    const Plan untouched = untouchedPart(openTasks, rest);
    const PlanView fresh{there, newPasses, plan}, former{there, formerPasses, *facts.before},
        notBegun{there, untouched, plan};

    const auto moved = movedQuilts(rest);
    const Plan openHere = partAt(openTasks, rest, moved, false),
               openThere = partAt(openTasks, rest, moved, true),
               untouchedHere = partAt(untouched, rest, moved, false),
               untouchedThere = partAt(untouched, rest, moved, true);
    const PlanView here{there, openHere, plan}, formerly{there, openThere, plan},
        notBegunHere{there, untouchedHere, plan}, notBegunThere{there, untouchedThere, plan};

    constexpr int kAll = std::numeric_limits<int>::max(); // so that the two can be compared
    Findings out;
    const auto unplaced = [](Finding f) {
        f.field.clear();
        return f;
    };
    // Less what the plan in force breaks in the same way, wherever it stands in its file.
    const auto compare = [&](const Rule& rule, const PlanView& is, const PlanView& was) {
        Findings found, standing;
        ask(rule, is, found, kAll);
        if (!found.empty())
            ask(rule, was, standing, kAll);
        for (Finding& f : found)
            if (std::ranges::find(standing, unplaced(f), unplaced) == standing.end())
                out.push_back(std::move(f));
    };
    for (const Rule& rule : rules())
        switch (rule.of) {
        case AskedOf::whole:
            compare(rule, whole, before);
            break;
        case AskedOf::sameRows:
            if (!rest.hasNewRows())
                compare(rule, whole, before);
            break;
        case AskedOf::newPasses:
            compare(rule, fresh, former);
            break;
        case AskedOf::open:
            ask(rule, open, out);
            break;
        case AskedOf::openInPlace:
            ask(rule, here, out);
            ask(rule, formerly, out);
            break;
        case AskedOf::notBegun:
            ask(rule, notBegun, out);
            break;
        case AskedOf::notBegunInPlace:
            ask(rule, notBegunHere, out);
            ask(rule, notBegunThere, out);
            break;
        case AskedOf::same:
        case AskedOf::first:
            break;
        }
    for (const RuleOfRest& rule : rulesOfRest()) {
        Report report{rule.name, out};
        rule.check(rest, report);
        report.close();
    }
    return out;
}

} // namespace bastewright
