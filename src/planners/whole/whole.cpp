#include "planners/whole/whole.h"

#include "planners/bring/bring.h"
#include "planners/crew/crew.h"
#include "planners/whole/help.h"
#include "planners/whole/quilt.h"

namespace bastewright {

std::vector<PointsPlan> planAllPoints(const Session& session, const WholeOptions& options,
                                      std::stop_token stop) {
    std::vector<PointsPlan> out;
    for (const Job& job : session.jobs)
        out.push_back(planPoints(
            job,
            {.effort = options.effort,
             .free = job.basting.layout == Basting::Layout::fewest,
             .memory = options.memory},
            stop));
    return out;
}

Plan planAround(const Session& session, const std::vector<PointsPlan>& points,
                const WholeOptions& options, std::stop_token stop) {
    Plan plan;
    plan.unit = session.jobs.front().unit;
    std::vector<LayerSizes> layers;
    std::vector<std::size_t> counts;
    for (std::size_t i = 0; i < session.jobs.size(); ++i) {
        layers.push_back(layerSizes(session.jobs[i]));
        counts.push_back(points[i].points.size());
    }
    for (const Shared& shared : shareRoom(session, layers, counts)) {
        const std::string prefix =
            session.severalQuilts ? "/jobs/" + std::to_string(shared.job) : std::string{};
        plan.quilts.push_back(planQuilt(session, shared, layers[shared.job], points[shared.job],
                                        prefix, plan.findings));
        for (Finding& f : adviceOn(session.jobs[shared.job], plan.quilts.back(), prefix))
            plan.findings.push_back(std::move(f));
    }
    // Nobody can be given work on a quilt that fits on no surface.
    const bool allLie =
        std::ranges::none_of(plan.quilts, [](const QuiltPlan& q) { return q.passes.empty(); });
    if (allLie) {
        std::vector<std::vector<PlacedPoint>> places;
        for (const PointsPlan& p : points)
            places.push_back(p.points);
        CrewPlan crew = planCrew(session, plan.quilts, places, {.effort = options.effort}, stop);
        plan.tasks = std::move(crew.tasks);
        plan.breaks = std::move(crew.breaks);
        plan.finish = crew.finish;
        plan.range = crew.range;
        plan.finishBound = crew.bound;
        for (Finding& f : crew.findings)
            plan.findings.push_back(std::move(f));
    }
    plan.supplies = planSupplies(session, plan.quilts);
    for (Finding& f : adviceOnPins(session, plan.quilts))
        plan.findings.push_back(std::move(f));
    std::ranges::stable_sort(plan.findings, std::greater<>{}, &Finding::level);
    return plan;
}

Plan planWhole(const Session& session, const WholeOptions& asked, std::stop_token stop) {
    PatternMemory own; // points in a pattern are where the fewest points begin
    WholeOptions options = asked;
    if (options.memory == nullptr)
        options.memory = &own;
    const std::vector<PointsPlan> points = planAllPoints(session, options, stop);
    Plan plan = planAround(session, points, options, stop);
    if (options.help && !plan.tasks.empty())
        plan.help = whatWouldHelp(session, plan, points, options, stop);
    return plan;
}

} // namespace bastewright
