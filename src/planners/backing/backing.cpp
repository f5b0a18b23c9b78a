#include "planners/backing/backing.h"

#include "planners/backing/arrangement.h"
#include "planners/backing/checks.h"
#include "planners/backing/front.h"
#include "planners/backing/nearest_miss.h"
#include "planners/backing/wording.h"

#include <algorithm>

namespace bastewright {
namespace {

using namespace backing;

/// The least that would have to be bought if every cloth could be.
Finding outOfCloth(Problem problem) {
    for (Fabric& f : problem.rules.fabrics)
        f.buyable = true;
    const auto bolts = boltsOf(problem.rules);
    const Front front = frontOf(problem, bolts);
    Finding out{Finding::Level::stop, "/backing/fabrics",
                "There is no way to piece a backing of " +
                    format(problem.needed.width, problem.unit) + " × " +
                    format(problem.needed.length, problem.unit) +
                    " from the cloth on hand, and none of it can be bought.",
                ""};
    if (front.choices.empty()) {
        out.cure = "A wider cloth is needed.";
        return out;
    }
    const Layout& least = front.choices.front().layout;
    for (std::size_t f = 0; f < least.buy.size(); ++f)
        if (least.buy[f] > Length{})
            out.cure += (out.cure.empty() ? "With " : " and ") +
                        saleLength(least.buy[f], problem.unit) + " more of " +
                        clothName(problem.rules.fabrics[f], problem.unit);
    out.cure += " it can be made.";
    return out;
}

BackingPlan planOf(const Problem& problem, const std::vector<Bolt>& bolts, const Choice& choice) {
    BackingPlan plan;
    plan.along = choice.layout.along;
    for (std::size_t f = 0; f < choice.layout.buy.size(); ++f)
        if (choice.layout.buy[f] > Length{})
            plan.buy.push_back({problem.rules.fabrics[f].name, choice.layout.buy[f]});
    Pieces pieces = piecesOf(problem, bolts, choice.layout, choice.arrangement);
    plan.panels = std::move(pieces.panels);
    plan.cuts = std::move(pieces.cuts);
    return plan;
}

} // namespace

BackingOutcome planBacking(const Job& job, Size needed, const BackingOptions& options) {
    Problem problem{needed, job.backing, job.unit, options.blocks, options.keepAway};
    BackingOutcome out;
    out.findings = checkInput(problem.rules, needed, job.unit);
    if (!out.findings.empty())
        return out;
    if (problem.rules.fabrics.empty()) {
        problem.rules.fabrics.push_back({.name = "backing cloth"});
        out.findings.push_back({Finding::Level::note, "/backing/fabrics",
                                "No backing cloth is listed, so one of " +
                                    format(Fabric{}.usableWidth, job.unit) +
                                    " usable width is taken.",
                                ""});
    }
    const auto bolts = boltsOf(problem.rules);
    Front front = frontOf(problem, bolts);
    if (front.choices.empty()) {
        out.findings.push_back(outOfCloth(problem));
        return out;
    }
    const Choice& chosen = front.choices.front();
    out.plan = planOf(problem, bolts, chosen);
    if (!chosen.keepsAway)
        out.findings.push_back({Finding::Level::warn, "/backing",
                                "A backing seam lies within " + format(kClear, job.unit) +
                                    " of a table join or a batting join; no layout that buys as "
                                    "little keeps away.",
                                ""});
    if (front.runnerUp)
        out.plan->runnerUp = describe(problem, bolts, *front.runnerUp) + ".";
    const auto offer = [&](const Choice& c, std::string wanted, bool isChosen) {
        out.plan->alternatives.push_back(
            {c.layout.along, c.layout.bought, isPriced(problem.rules) ? c.layout.cost : 0.0,
             c.layout.waste, c.layout.seams, describe(problem, bolts, c.layout) + ".",
             std::move(wanted), isChosen});
        if (options.ways)
            out.ways.push_back(planOf(problem, bolts, c));
    };
    if (options.nearestMiss)
        if (const auto unlisted = withUnlisted(problem, bolts, chosen.layout.cost))
            offer(*unlisted, unlistedText(problem, unlisted->layout), false);
    for (const Choice& c : front.choices)
        offer(c, "", &c == &chosen);
    if (options.nearestMiss)
        out.plan->nearestMiss = nearestMiss(problem, chosen.layout);
    return out;
}

} // namespace bastewright
