#include "session/private/rest_planning.h"

#include "plan/find.h"
#include "planners/crew/behind.h"
#include "planners/crew/crew.h"
#include "planners/crew/zone_points.h"
#include "planners/passes/rest.h"
#include "planners/whole/help.h"
#include "planners/whole/quilt.h"
#include "session/private/change_words.h"
#include "session/private/fold.h"
#include "session/private/rest_plan.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace bastewright {
namespace {

bool isBegunPass(const Plan& plan, const LiveState& state, int job, int pass) {
    return isStepped(plan, state, job, pass) ||
           std::ranges::any_of(state.zones, [&](const auto& z) {
               const auto& [key, live] = z;
               if (key.first != job)
                   return false;
               const Zone* zone = findZone(plan.quilts[static_cast<std::size_t>(job)], key.second);
               return zone && zone->pass == pass && isBegun(*zone, live);
           });
}

/// How many passes, from the first, stay as they are.
int passesKept(const Plan& plan, const LiveState& state, int job) {
    const auto& passes = plan.quilts[static_cast<std::size_t>(job)].passes;
    const int current = state.currentPass[static_cast<std::size_t>(job)];
    if (state.released.contains({job, current}))
        return static_cast<int>(passes.size());
    if (!isBegunPass(plan, state, job, current))
        return current - 1;
    auto kept = static_cast<std::size_t>(current);
    while (kept < passes.size() && passes[kept].pulled) // of the same stay on the table
        ++kept;
    return static_cast<int>(kept);
}

/// Helpers who are at the table or still to come.
Setting whoIsThere(Setting setting, const LiveState& state, Seconds now) {
    const ClockTime clock = after(setting.start, now);
    std::erase_if(setting.helpers, [&](const Helper& h) {
        return !state.present.contains(h.name) && (!h.from || *h.from <= clock);
    });
    return setting;
}

/// The figures of the way that is taken, over all passes, those that stay too.
void sumUpAll(QuiltPlan& quilt, const std::vector<PlacedPoint>& points) {
    Alternative& way = quilt.alternatives.front();
    way.pulls = static_cast<int>(std::ranges::count_if(quilt.passes, &Pass::pulled));
    way.passes = static_cast<int>(quilt.passes.size()) - way.pulls;
    way.reach = deepestPlace(quilt, points);
    way.shifted = way.largestShift = Length{};
    way.lifts = 0;
    for (const Pass& p : quilt.passes) {
        const Length by = abs(p.shift.dx) + abs(p.shift.dy);
        way.shifted += by;
        way.largestShift = std::max(way.largestShift, by);
        way.lifts += p.liftPeople > 1 ? 1 : 0;
        way.liftPeople = std::max(way.liftPeople, p.liftPeople);
        way.liftKilograms = std::max(way.liftKilograms, p.liftKilograms);
    }
    const Point table = quilt.passes.front().table.middle();
    const auto off = [](Length at, Length top) {
        const Length by = at - top / 2;
        return abs(by) <= Length::nanometres(2) ? Length{} : by; // halves of odd nanometres
    };
    way.offCentre = quilt.surface.floor ? Vec{}
                                        : Vec{off(table.x, quilt.layers.top.width),
                                              off(table.y, quilt.layers.top.length)};
}

/// Whole tables pushed together, or the floor where there are none.
std::vector<Arrangement> surfacesOf(const std::vector<Table>& tables, const LayerSizes& layers) {
    if (tables.empty())
        return {floorArrangement(layers.backing)};
    return arrangements(tables);
}

/// The passes that stay come from the plan in force, with their zones and people; cloth that is cut
/// and sewn stays too.
void takeKept(QuiltPlan& quilt, const QuiltPlan& from, int kept) {
    for (std::size_t p = 0; p < static_cast<std::size_t>(kept) && p < from.passes.size(); ++p)
        quilt.passes[p] = from.passes[p];
    std::erase_if(quilt.zones, [kept](const Zone& z) { return z.pass <= kept; });
    std::vector<Zone> zones;
    for (const Zone& z : from.zones)
        if (z.pass <= kept)
            zones.push_back(z);
    quilt.zones.insert(quilt.zones.begin(), zones.begin(), zones.end());
    quilt.layers = from.layers;
    quilt.backing = from.backing;
    quilt.batting = from.batting;
    quilt.machineRolls = from.machineRolls;
}

/// What was asked for of the way and is not had by the passes that are new.
void sayNotAsAsked(const Session& session, int job, const QuiltPlan& quilt, Findings& findings) {
    std::erase_if(findings, [job](const Finding& f) {
        return f.quilt == job &&
               (f.kind == Finding::Kind::otherStart || f.kind == Finding::Kind::otherLie ||
                f.kind == Finding::Kind::otherTables);
    });
    for (Finding& f : notAsAskedFor(session, session.jobs[static_cast<std::size_t>(job)],
                                    quilt.alternatives.front()))
        findings.push_back(ofQuilt(std::move(f), job, session.severalQuilts));
}

/// Somebody would have to stay longer than they can for what is finished first.
bool isBeyondHours(const std::vector<Task>& kept, const std::set<std::string>& done,
                   const std::vector<crew::Hand>& hands) {
    return std::ranges::any_of(kept, [&](const Task& t) {
        return !done.contains(t.id) && std::ranges::any_of(hands, [&](const crew::Hand& h) {
            return Seconds{h.until} < t.end &&
                   std::ranges::find(t.people, h.helper.name) != t.people.end();
        });
    });
}

/// What would wait for nothing waits for what is finished first: of its own quilt, else of those
/// before it on its surface.
void waitForWhatIsFinished(std::vector<Task>& tasks, const std::vector<Task>& kept,
                           const std::set<std::string>& done,
                           const std::vector<QuiltPlan>& quilts) {
    std::map<int, std::vector<std::string>> last; // by quilt: what no other task waits for
    for (const Task& t : kept)
        if (!done.contains(t.id) && std::ranges::none_of(kept, [&](const Task& o) {
                return std::ranges::find(o.after, t.id) != o.after.end();
            }))
            last[t.job].push_back(t.id);
    for (Task& t : tasks) {
        if (!t.after.empty())
            continue;
        const int surface = quilts[static_cast<std::size_t>(t.job)].surface.number;
        for (int q = t.job; q >= 0 && t.after.empty(); --q)
            if (const auto at = last.find(q);
                at != last.end() && quilts[static_cast<std::size_t>(q)].surface.number == surface)
                t.after = at->second;
    }
}

} // namespace

OtherPasses noOtherPasses(Sentence why) {
    return {.refused = std::move(why), .session = {}, .plan = {}};
}

Sentence noTableServes() {
    return core::says(
        "What is left cannot be basted on these tables: none of them, alone or pushed "
        "together, holds a pass with what is basted beside it. Add a table, or keep "
        "those the quilt lies on.");
}

RestPlanning::RestPlanning(const Session& session, const Plan& plan, const LiveState& state,
                           const ReplanOptions& options, std::stop_token stop)
    : session_{session}
    , plan_{plan}
    , state_{state}
    , options_{options}
    , stop_{std::move(stop)} {
    for (int q = 0; q < static_cast<int>(plan.quilts.size()); ++q)
        kept_.push_back(passesKept(plan, state, q));
}

bool RestPlanning::hasLeftOut(int job) const {
    return std::ranges::any_of(
        plan_.quilts[static_cast<std::size_t>(job)].zones, [&](const Zone& z) {
            return z.pass > kept(job) && state_.setAside.contains({job, z.id});
        });
}

bool RestPlanning::isNothingKept() const {
    return std::ranges::all_of(kept_, [](int k) { return k == 0; });
}

bool RestPlanning::isOver(int job) const {
    return kept(job) >= static_cast<int>(plan_.quilts[static_cast<std::size_t>(job)].passes.size());
}

std::optional<QuiltPlan> RestPlanning::lay(int job, const std::vector<PlacedPoint>& points,
                                           const std::vector<Table>& tables) const {
    const auto q = static_cast<std::size_t>(job);
    const int kept = kept_[q];
    QuiltPlan quilt = plan_.quilts[q];
    if (kept == 0)
        return layAnew(job, points, tables);
    const Setting setting = whoIsThere(session_.setting, state_, options_.now);
    const PassRequest request{.job = session_.jobs[q],
                              .setting = setting,
                              .layers = quilt.layers,
                              .points = points,
                              .alone = session_.jobs.size() == 1,
                              .stop = stop_};
    const std::vector<Pass> done{quilt.passes.begin(), quilt.passes.begin() + kept};
    const auto how = std::ranges::find_if(quilt.alternatives, &Alternative::chosen);
    const auto choice =
        choiceForRest(request, surfacesOf(tables, quilt.layers), done,
                      how == quilt.alternatives.end() ? Basting::Start::besideMiddle : how->start);
    if (!choice)
        return {};
    quilt.surface = surfacePlan(*choice, quilt.surface.number);
    quilt.passes = detailedPasses(request, *choice, done);
    std::erase_if(quilt.zones, [kept](const Zone& z) { return z.pass > kept; });
    quilt.alternatives = {choice->summary};
    sumUpAll(quilt, points);
    const Alternative& way = quilt.alternatives.front();
    quilt.bounds.passes = std::min(quilt.bounds.passes, way.passes);
    return quilt;
}

/// A quilt of which nothing lies yet, by itself on these tables with its points as they are.
std::optional<QuiltPlan> RestPlanning::layAnew(int job, const std::vector<PlacedPoint>& points,
                                               const std::vector<Table>& tables) const {
    const auto q = static_cast<std::size_t>(job);
    const QuiltPlan& was = plan_.quilts[q];
    Session alone = session_;
    alone.jobs = {session_.jobs[q]};
    alone.setting = whoIsThere(alone.setting, state_, options_.now);
    alone.setting.room.tables = tables;
    PointsPlan known;
    known.points = points;
    std::ranges::sort(known.points, {}, [](const PlacedPoint& p) {
        return std::tuple{p.at.y, p.at.x, p.angle};
    });
    known.bound = was.bounds.points;
    known.rows = was.rows;
    known.blocks = was.blocks;
    Groundwork ground{{std::move(known)}};
    Plan plan = planAround(alone, ground, stop_);
    if (plan.quilts.size() != 1 || plan.quilts.front().passes.empty())
        return {};
    QuiltPlan quilt = std::move(plan.quilts.front());
    quilt.surface.number = was.surface.number;
    for (Pass& p : quilt.passes)
        for (const Side side : kSides)
            if (session_.jobs.size() > 1 && p.beyond[side] == Beyond::spareTable)
                p.beyond[side] = Beyond::chairs; // another quilt may need that table
    quilt.bounds = was.bounds;
    quilt.bounds.passes =
        std::min(was.bounds.passes, static_cast<int>(std::ranges::count_if(
                                        quilt.passes, [](const Pass& p) { return !p.pulled; })));
    return quilt;
}

OtherPasses RestPlanning::anew(std::vector<PointsPlan> found) const {
    Groundwork ground{std::move(found)};
    Plan plan = planAround(session_, ground, stop_);
    if (plan.quilts.size() != plan_.quilts.size() ||
        std::ranges::any_of(plan.quilts, [](const QuiltPlan& q) { return q.passes.empty(); }))
        return noOtherPasses(noTableServes());
    std::vector<Moved> moved;
    const auto points = pointsOfZones(plan.quilts);
    for (int q = 0; q < std::ssize(plan.quilts); ++q)
        moved.push_back({q, std::move(plan.quilts[static_cast<std::size_t>(q)])});
    return withPeople(std::move(moved), points, &plan.findings);
}

OtherPasses RestPlanning::withPeople(std::vector<Moved> moved,
                                     const std::vector<std::vector<PlacedPoint>>& points,
                                     const Findings* found) const {
    for (const Moved& m : moved)
        if (hasLeftOut(m.job))
            return noOtherPasses(core::says(
                "In what is left of %1 some zones get fuse dots or are left out. Take that back "
                "first, then its passes can be planned anew.",
                quiltNamed(plan_, m.job)));
    OtherPasses out{.session = session_, .plan = plan_};
    if (found != nullptr)
        out.plan.findings = *found;
    std::set<int> jobs;
    for (Moved& m : moved) {
        jobs.insert(m.job);
        std::erase_if(out.session.jobs[static_cast<std::size_t>(m.job)].handed,
                      [&](const HandedZone& h) {
                          return std::ranges::none_of(
                              m.quilt.zones, [&](const Zone& z) { return z.id == h.zone; });
                      });
    }
    std::set<std::string> done = state_.doneTasks;
    // What is done once the quilt is turned over comes after the passes that are new.
    const auto isOfKept = [this](const PlanIndex& index, const Task& t) {
        return t.pass <= kept(t.job) && callOf(t.kind) != Call::rollUp && !index.fromBack(t);
    };
    const PlanIndex inForce{plan_};
    const auto isOpen = [&](const Task& t) {
        return isOfKept(inForce, t) && !done.contains(t.id) &&
               !(!t.zone.empty() && state_.setAside.contains({t.job, t.zone}));
    };
    for (const int job : jobs)
        if (std::ranges::any_of(plan_.tasks,
                                [&](const Task& t) { return t.job == job && isOpen(t); }))
            out.finishing.emplace_back(job, kept(job));
    // Then what is begun on the other tables is finished too, and all go on from there.
    const bool finishes = !out.finishing.empty();
    Plan before = finishes ? replan(session_, plan_, state_, options_, stop_) : plan_;
    const PlanIndex indexBefore{before};
    const auto stays = [&](const Task& t) {
        return isOfKept(indexBefore, t) && (finishes || jobs.contains(t.job));
    };
    Seconds now = options_.now;
    std::vector<Task> keptTasks = doneBy(options_.now, before, done);
    for (const Task& t : before.tasks)
        if (stays(t) && !done.contains(t.id)) {
            keptTasks.push_back(t);
            now = std::max(now, t.end);
        }
    std::set<std::pair<int, int>> finished;
    for (const Task& t : before.tasks)
        if (stays(t)) {
            done.insert(t.id);
            finished.emplace(t.job, t.pass);
        }
    // Breaks while it is finished.
    std::vector<PlannedBreak> rests;
    Seconds lastRest = options_.lastRest;
    if (finishes)
        for (const PlannedBreak& b : before.breaks)
            if (b.end > options_.now && b.end <= now) {
                rests.push_back(b);
                lastRest = std::max(lastRest, b.end);
            }
    const Situation situation{.now = now,
                              .before = &before,
                              .done = std::move(done),
                              .inHand =
                                  finishes ? std::map<std::string, Seconds>{} : options_.inHand,
                              .begun = begunZones(session_, before, state_),
                              .setAside = state_.setAside,
                              .finished = std::move(finished),
                              .present = state_.present,
                              .presentAt = options_.now,
                              .lastRest = lastRest,
                              .pins = pinsForRest(session_, plan_, state_)};
    if (finishes)
        out.plan.quilts = before.quilts; // zones of passes that are begun may be shared anew
    for (Moved& m : moved) {
        QuiltPlan& was = before.quilts[static_cast<std::size_t>(m.job)];
        takeKept(m.quilt, was, kept(m.job));
        // On another quilt's tables people have that quilt's letters.
        if (was.surface.number != m.quilt.surface.number)
            for (Pass& p : was.passes)
                p.stretches.clear();
        sayNotAsAsked(out.session, m.job, m.quilt, out.plan.findings);
        out.plan.quilts[static_cast<std::size_t>(m.job)] = std::move(m.quilt);
    }
    CrewPlan crew = planRest(withLearntPaces(out.session, options_), out.plan.quilts, points,
                             situation, {}, stop_);
    if (isBeyondHours(keptTasks, state_.doneTasks,
                      crew::handsNow(session_.setting.helpers, session_.setting.start, situation)))
        std::ranges::copy_if(before.findings, std::back_inserter(crew.findings),
                             [](const Finding& f) { return f.kind == Finding::Kind::hoursShort; });
    waitForWhatIsFinished(crew.tasks, keptTasks, state_.doneTasks, out.plan.quilts);
    out.plan = putTogether(std::move(out.plan), std::move(keptTasks), crew, out.session, state_,
                           options_.now);
    for (PlannedBreak& b : rests)
        if (std::ranges::find(out.plan.breaks, b) == out.plan.breaks.end())
            out.plan.breaks.push_back(std::move(b));
    std::ranges::sort(out.plan.breaks);
    return out;
}

} // namespace bastewright
