#include "session/private/other_passes.h"

#include "planners/crew/crew.h"
#include "planners/passes/rest.h"
#include "planners/whole/help.h"
#include "planners/whole/pins.h"
#include "session/pins.h"
#include "session/private/rest_plan.h"
#include "session/private/rows_beyond.h"
#include "ways/way.h"

#include <algorithm>

namespace bastewright {
namespace {

bool isBegun(const Plan& plan, const LiveState& state, int job, int pass) {
    return isStepped(plan, state, job, pass) ||
           std::ranges::any_of(state.zones, [&](const auto& z) {
               if (z.first.first != job || z.second.state == ZoneState::waiting)
                   return false;
               const auto& zones = plan.quilts[static_cast<std::size_t>(job)].zones;
               const auto at = std::ranges::find(zones, z.first.second, &Zone::id);
               return at != zones.end() && at->pass == pass && !at->points.empty();
           });
}

/// How many passes, from the first, stay as they are.
int passesKept(const Plan& plan, const LiveState& state, int job) {
    const auto& passes = plan.quilts[static_cast<std::size_t>(job)].passes;
    const int current = state.currentPass[static_cast<std::size_t>(job)];
    if (state.released.contains({job, current}))
        return static_cast<int>(passes.size());
    if (!isBegun(plan, state, job, current))
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

std::vector<Arrangement> surfacesOf(const Room& room, const LayerSizes& layers) {
    if (room.tables.empty())
        return {floorArrangement(layers.backing)};
    return arrangements(room.tables);
}

std::vector<PlacedPoint> pointsOfPasses(const QuiltPlan& quilt, int last) {
    std::vector<PlacedPoint> out;
    for (const Zone& z : quilt.zones)
        if (z.pass <= last)
            out.insert(out.end(), z.points.begin(), z.points.end());
    return out;
}

OtherPasses no(Sentence why) {
    return {.refused = std::move(why), .session = {}, .plan = {}};
}

Sentence noTableServes() {
    return core::says(
        "What is left cannot be basted on these tables: none of them, alone or pushed "
        "together, holds a pass with what is basted beside it. Add a table, or keep "
        "those the quilt lies on.");
}

class Planning {
public:
    Planning(const Session& session, const Plan& plan, const LiveState& state,
             const ReplanOptions& options, std::stop_token stop)
        : session_{session}
        , plan_{plan}
        , state_{state}
        , options_{options}
        , stop_{std::move(stop)}
        , kept_{passesKept(plan, state, 0)} {}

    int kept() const { return kept_; }

    /// The quilt's passes with these points on these surfaces; nothing where none serves.
    std::optional<QuiltPlan> lay(const std::vector<PlacedPoint>& points,
                                 const std::vector<Arrangement>& surfaces) const {
        QuiltPlan quilt = plan_.quilts.front();
        const Setting setting = whoIsThere(session_.setting, state_, options_.now);
        const PassRequest request{.job = session_.jobs.front(),
                                  .setting = setting,
                                  .layers = quilt.layers,
                                  .points = points,
                                  .stop = stop_};
        const std::vector<Pass> done{quilt.passes.begin(), quilt.passes.begin() + kept_};
        const auto how = std::ranges::find_if(quilt.alternatives, &Alternative::chosen);
        const auto choice = choiceForRest(
            request, surfaces, done,
            how == quilt.alternatives.end() ? Basting::Start::besideMiddle : how->start);
        if (!choice)
            return {};
        quilt.surface = surfacePlan(*choice, quilt.surface.number);
        quilt.passes = detailedPasses(request, *choice, done);
        std::erase_if(quilt.zones, [this](const Zone& z) { return z.pass > kept_; });
        quilt.alternatives = {choice->summary};
        Alternative& way = quilt.alternatives.front();
        way.pulls = static_cast<int>(std::ranges::count_if(quilt.passes, &Pass::pulled));
        way.passes = static_cast<int>(quilt.passes.size()) - way.pulls;
        quilt.bounds.passes = std::min(quilt.bounds.passes, way.passes);
        return quilt;
    }

    /// Where no pass is kept: all of the quilt with these points, which are those of the session.
    OtherPasses anew(std::vector<PointsPlan> found) const {
        Groundwork ground{std::move(found)};
        Plan plan = planAround(session_, ground, stop_);
        if (plan.quilts.size() != 1 || plan.quilts.front().passes.empty())
            return no(noTableServes());
        auto points = pointsOfZones(plan.quilts.front());
        return withPeople(std::move(plan.quilts.front()), std::move(points));
    }

    /// Everybody's work with it; a pass that is begun first, as it lies.
    OtherPasses withPeople(QuiltPlan quilt, std::vector<PlacedPoint> points) const {
        OtherPasses out{.session = session_, .plan = plan_};
        std::erase_if(out.session.jobs.front().handed, [&](const HandedZone& h) {
            return std::ranges::none_of(quilt.zones, [&](const Zone& z) { return z.id == h.zone; });
        });
        std::set<std::string> done = state_.doneTasks;
        Plan before = plan_;
        Seconds now = options_.now;
        const auto isKept = [this](const Task& t) {
            return t.pass <= kept_ && callOf(t.kind) != Call::rollUp;
        };
        const auto isOpen = [&](const Task& t) {
            return isKept(t) && !done.contains(t.id) &&
                   !(!t.zone.empty() && state_.setAside.contains({t.job, t.zone}));
        };
        if (kept_ > 0 && std::ranges::any_of(plan_.tasks, isOpen)) {
            before = replan(session_, plan_, state_, options_, stop_);
            out.finishing = kept_;
        }
        std::vector<Task> keptTasks = doneBy(options_.now, before, done);
        for (const Task& t : before.tasks)
            if (isKept(t) && !done.contains(t.id)) {
                keptTasks.push_back(t);
                now = std::max(now, t.end);
            }
        for (const Task& t : before.tasks)
            if (isKept(t))
                done.insert(t.id);
        const Situation situation{.now = now,
                                  .before = &before,
                                  .done = std::move(done),
                                  .setAside = state_.setAside,
                                  .present = state_.present,
                                  .lastRest = options_.lastRest};
        out.plan.quilts.front() = std::move(quilt);
        const std::vector<std::vector<PlacedPoint>> all{std::move(points)};
        const CrewPlan crew = planRest(withLearntPaces(out.session, options_), out.plan.quilts, all,
                                       situation, {}, stop_);
        out.plan = putTogether(std::move(out.plan), std::move(keptTasks), crew, out.session, state_,
                               options_.now);
        return out;
    }

private:
    const Session& session_;
    const Plan& plan_;
    const LiveState& state_;
    const ReplanOptions& options_;
    std::stop_token stop_;
    int kept_;
};

/// Why the passes of this session stay as they are; empty where they need not.
Sentence whyTheyStay(const Plan& plan, const LiveState& state) {
    if (plan.quilts.size() != 1)
        return core::says("With several quilts at once the passes stay as they are: each is "
                          "finished on its own tables.");
    if (static_cast<std::size_t>(passesKept(plan, state, 0)) >= plan.quilts.front().passes.size())
        return core::says("No pass is left to be planned otherwise.");
    return {};
}

} // namespace

OtherPasses onOtherTables(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop) {
    if (auto why = whyTheyStay(plan, state); !why.empty())
        return no(std::move(why));
    const Planning planning{session, plan, state, options, stop};
    if (planning.kept() == 0)
        return planning.anew(planAllPoints(session, {}, std::move(stop)));
    auto points = pointsOfZones(plan.quilts.front());
    auto quilt = planning.lay(points, surfacesOf(session.setting.room, plan.quilts.front().layers));
    return quilt ? planning.withPeople(*std::move(quilt), std::move(points)) : no(noTableServes());
}

OtherPasses withWiderRows(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop) {
    if (auto why = whyTheyStay(plan, state); !why.empty())
        return no(std::move(why));
    const Job& job = session.jobs.front();
    const QuiltPlan& was = plan.quilts.front();
    const int kept = passesKept(plan, state, 0);
    const int current = state.currentPass.front();
    if (kept >= current)
        return no(core::says("Finish pass %1 first: its rows are marked on the ribbons. Then the "
                             "rows of what is left can be wider.",
                             current));
    const PinCount pins = countPins(plan, session.setting, state);
    if (!wayOf(job).fromBox || pins.shortBy() == 0)
        return no(core::says("The pins do for all that is left."));
    const auto limit = job.quilting.gapLimit;
    Session wider = session;
    Length& spacing = wider.jobs.front().basting.spacing;
    // Where rows meet those that are basted a few more are needed; so it may take another try.
    constexpr int kTries = 4;
    std::int64_t wanted = pins.toPlace;
    for (int attempt = 0; attempt < kTries && pins.left > 0; ++attempt) {
        spacing = std::max(spacing + Length::inches(1) / 8, spacingFor(spacing, wanted, pins.left));
        if (spacing > Length::inches(12) || (limit && spacing > *limit))
            break;
        std::vector<PointsPlan> found = planAllPoints(wider, {}, stop);
        const PointsPlan& rows = found.front();
        std::vector<Pass> done{was.passes.begin(), was.passes.begin() + kept};
        const auto rest =
            rowsBeyond(job, wider.jobs.front(), pointsOfZones(was), rows.points, done);
        wanted = std::ssize(rest);
        if (wanted > pins.left)
            continue;
        const Planning planning{wider, plan, state, options, stop};
        if (planning.kept() == 0)
            return planning.anew(std::move(found));
        auto points = pointsOfPasses(was, kept);
        points.insert(points.end(), rest.begin(), rest.end());
        auto quilt = planning.lay(points, surfacesOf(session.setting.room, was.layers));
        if (!quilt)
            return no(noTableServes());
        quilt->rows = rows.rows;
        quilt->blocks = rows.blocks;
        return planning.withPeople(*std::move(quilt), std::move(points));
    }
    return no(limit ? core::says("Rows as wide as these pins allow are wider than the batting "
                                 "takes (%1). Fetch %2 more pins.",
                                 core::length(*limit, job.unit), pins.shortBy())
                    : core::says("Rows as wide as these pins allow would not hold the layers. "
                                 "Fetch %1 more pins.",
                                 pins.shortBy()));
}

} // namespace bastewright
