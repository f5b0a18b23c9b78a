#include "planners/whole/whole.h"

#include "planners/bring/bring.h"
#include "planners/whole/help.h"
#include "planners/whole/quilt.h"
#include "planners/whole/ways.h"

namespace bastewright {

std::vector<PointsPlan> planAllPoints(const Session& session, const WholeOptions& options,
                                      std::stop_token stop) {
    std::vector<PointsPlan> out;
    for (const Job& job : session.jobs)
        out.push_back(planPoints(job, {.effort = options.effort, .memory = options.memory}, stop));
    return out;
}

Plan planAround(const Session& session, Groundwork& ground, std::stop_token stop) {
    const std::vector<PointsPlan>& points = ground.points;
    Plan plan;
    plan.unit = session.jobs.front().unit;
    const std::vector<LayerSizes> layers = layerSizes(session);
    ChosenWays chosen =
        chooseWays(session, shareRoom(session, layers, points, ground.layouts, stop), layers,
                   points, ground.layouts, stop);
    for (std::size_t i = 0; i < chosen.shared.size(); ++i) {
        const Shared& shared = chosen.shared[i];
        Findings found;
        plan.quilts.push_back(
            planQuilt(session, shared, std::move(chosen.quilts[i]), points[shared.job], found));
        const Findings advice = adviceOn(session, session.jobs[shared.job], plan.quilts.back());
        found.insert(found.end(), advice.begin(), advice.end());
        for (Finding& f : found)
            plan.findings.push_back(
                ofQuilt(std::move(f), static_cast<int>(shared.job), session.severalQuilts));
    }
    plan.tasks = std::move(chosen.crew.tasks);
    plan.breaks = std::move(chosen.crew.breaks);
    plan.finish = chosen.crew.finish;
    plan.range = chosen.crew.range;
    plan.finishBound = chosen.crew.bound;
    for (Finding& f : chosen.crew.findings)
        plan.findings.push_back(std::move(f));
    plan.supplies = planSupplies(session, plan.quilts);
    for (Finding& f : adviceOnClips(session, plan.quilts))
        plan.findings.push_back(std::move(f));
    for (Finding& f : adviceOnPins(session, plan.quilts))
        plan.findings.push_back(std::move(f));
    std::ranges::stable_sort(plan.findings, std::greater<>{}, &Finding::level);
    return plan;
}

Plan planWhole(const Session& session, const WholeOptions& options, std::stop_token stop) {
    Groundwork ground{planAllPoints(session, options, stop)};
    Plan plan = planAround(session, ground, stop);
    if (options.help && !plan.tasks.empty())
        plan.help = whatWouldHelp(session, plan, ground, options, stop);
    return plan;
}

} // namespace bastewright
