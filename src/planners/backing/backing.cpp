#include "planners/backing/backing.h"

#include "planners/backing/arrangement.h"
#include "planners/backing/checks.h"
#include "planners/backing/front.h"
#include "planners/backing/nearest_miss.h"
#include "planners/backing/wording.h"

#include <algorithm>
#include <utility>

namespace bastewright {
namespace {

using namespace backing;

/// A narrower piece cannot be sewn true, whatever was asked for.
constexpr Length kNarrowest = Length::inches(2);

/// Bought lengths are steps apart; a length read from a file may be rounded.
constexpr Length kSameBought = Length::inch64ths(8);

/// The layouts of the rules as they are. Where none can be sewn, of rules that are given up one
/// after the other: strips stay clear of the overage, pieces are not narrow. What was given up is
/// said.
Front frontBy(Problem& problem, const std::vector<Bolt>& bolts, Findings& findings) {
    Front front = frontOf(problem, bolts);
    if (!front.choices.empty())
        return front;
    const Problem asked = problem;
    problem.edgesLoose = true;
    front = frontOf(problem, bolts);
    const auto say = [&](Finding::Kind kind, Sentence text) {
        findings.push_back({kind, Finding::Level::warn, "/backing", std::move(text), ""});
    };
    if (!front.choices.empty()) {
        say(Finding::Kind::backingTrimmed,
            core::says(
                "One strip along the edge of the backing will be wholly or nearly trimmed away, "
                "however this fabric is cut. Sew it on all the same: the clamps grip it."));
        return front;
    }
    problem.rules.leastPiece = std::min(problem.rules.leastPiece, kNarrowest);
    front = frontOf(problem, bolts);
    if (front.choices.empty())
        problem = asked;
    else
        say(Finding::Kind::backingNarrow,
            core::says("Pieces narrower than %1 are sewn in; no layout of this fabric avoids it.",
                       core::length(asked.rules.leastPiece, asked.unit)));
    return front;
}

/// The least that would have to be bought if every cloth could be.
Finding outOfCloth(Problem problem) {
    for (Fabric& f : problem.rules.fabrics)
        f.buyable = true;
    const auto bolts = boltsOf(problem.rules);
    Findings unsaid;
    const Front front = frontBy(problem, bolts, unsaid);
    Finding out{Finding::Kind::fabricShort, Finding::Level::stop, "/backing/fabrics",
                core::says("There is no way to piece a backing of %1 × %2 from the fabric we have, "
                           "and none of it can be bought.",
                           core::length(problem.needed.width, problem.unit),
                           core::length(problem.needed.length, problem.unit)),
                ""};
    if (front.choices.empty()) {
        out.cure = core::says("A wider fabric is needed.");
        return out;
    }
    const Layout& least = front.choices.front().layout;
    Sentence more;
    for (std::size_t f = 0; f < least.buy.size(); ++f) {
        if (least.buy[f] <= Length{})
            continue;
        Sentence this_ = core::says("%1 more of %2", saleLength(least.buy[f], problem.unit),
                                    clothName(problem.rules.fabrics[f], problem.unit));
        more = more.empty() ? std::move(this_)
                            : core::says("%1 and %2", std::move(more), std::move(this_));
    }
    out.cure = core::says("With %1 it can be made.", std::move(more));
    return out;
}

/// The way the person chose, else the best. A way that is not offered any more is said.
const Choice& chosenOf(const Problem& problem, const Front& front, Findings& findings) {
    const Choice& best = front.choices.front();
    if (!problem.rules.way)
        return best;
    const BackingWay& way = *problem.rules.way;
    const auto at = std::ranges::find_if(front.choices, [&](const Choice& c) {
        return c.layout.seams == way.seams && abs(c.layout.bought - way.bought) < kSameBought;
    });
    if (at != front.choices.end())
        return *at;
    findings.push_back(
        {Finding::Kind::backingWayGone, Finding::Level::note, "/backing/way",
         way.seams == 1 ? core::says("The way chosen before, %1 with 1 seam, is not offered for "
                                     "these sizes and this fabric; the best way is taken.",
                                     saleLength(way.bought, problem.unit))
                        : core::says("The way chosen before, %1 with %2 seams, is not offered "
                                     "for these sizes and this fabric; the best way is taken.",
                                     saleLength(way.bought, problem.unit), way.seams),
         ""});
    return best;
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

/// What is cut into and is not in the backing: all that is bought, of a length on hand as far as it
/// is cut. Cloth that is not listed is nobody's count.
double wasteOf(const Backing& rules, const BackingPlan& plan) {
    double out = 0;
    for (const Fabric& f : rules.fabrics) {
        if (&f != &*std::ranges::find(rules.fabrics, f.name, &Fabric::name))
            continue; // named in the plan as one
        Length cut;
        for (const ClothCut& c : plan.cuts)
            if (c.onHand && c.fabric == f.name)
                cut = std::max(cut, c.onCloth.y1);
        for (const BackingPurchase& b : plan.buy)
            if (b.fabric == f.name)
                cut += b.length;
        out += cut.in() * f.usableWidth.in();
    }
    for (const BackingPanel& p : plan.panels)
        if (p.fabric != kUnlistedCloth)
            out -= areaSquareInches(p.area);
    return out;
}

} // namespace

BackingOutcome planBacking(const Job& job, Size needed, const BackingOptions& options) {
    Problem problem{needed, job.backing, job.unit, options.blocks, options.keepAway};
    BackingOutcome out;
    out.findings = checkInput(problem.rules, needed, job.unit);
    if (!out.findings.empty())
        return out;
    if (problem.rules.fabrics.empty()) {
        problem.rules.fabrics.push_back({.name = "backing fabric"});
        out.findings.push_back({Finding::Kind::fabricAssumed, Finding::Level::note,
                                "/backing/fabrics",
                                core::says("No backing fabric is listed, so one of %1 usable width "
                                           "is taken.",
                                           core::length(Fabric{}.usableWidth, job.unit)),
                                ""});
    }
    const auto bolts = boltsOf(problem.rules);
    const Front front = frontBy(problem, bolts, out.findings);
    if (front.choices.empty()) {
        out.findings.push_back(outOfCloth(problem));
        return out;
    }
    const Choice& best = front.choices.front();
    const Choice& chosen = chosenOf(problem, front, out.findings);
    out.plan = planOf(problem, bolts, chosen);
    if (!chosen.keepsAway)
        out.findings.push_back({Finding::Kind::backingOnJoints, Finding::Level::warn, "/backing",
                                core::says("A backing seam lies within %1 of a table join or a "
                                           "batting join; no layout as good keeps away.",
                                           core::length(kClear, job.unit)),
                                ""});
    const auto beside = [&](const Layout& other) {
        return core::says("%1: %2.", describe(problem, bolts, other),
                          difference(problem, other, chosen.layout));
    };
    const Choice& least = *std::ranges::min_element(front.choices, {}, [](const Choice& c) {
        return std::pair(c.layout.cost, c.layout.score);
    });
    if (least.layout.cost < chosen.layout.cost)
        out.plan->leastBought = beside(least.layout);
    if (&chosen != &best)
        out.plan->runnerUp = beside(best.layout);
    else if (front.runnerUp)
        out.plan->runnerUp = beside(*front.runnerUp);
    if (&chosen == &best && out.plan->runnerUp == out.plan->leastBought)
        out.plan->runnerUp = {}; // said once
    out.plan->toBring = toBring(problem, bolts, chosen.layout);
    const auto offer = [&](const Choice& c, Sentence wanted, bool isChosen) {
        BackingPlan way = planOf(problem, bolts, c);
        out.plan->alternatives.push_back(
            {c.layout.along, c.layout.bought, isPriced(problem.rules) ? c.layout.cost : 0.0,
             wasteOf(problem.rules, way), c.layout.seams,
             core::says("%1.", describe(problem, bolts, c.layout)), std::move(wanted), isChosen});
        if (options.ways)
            out.ways.push_back(std::move(way));
    };
    for (const Choice& c : front.choices)
        offer(c, "", &c == &chosen);
    if (options.nearestMiss)
        if (const auto unlisted = withUnlisted(problem, bolts, best.layout.score))
            offer(*unlisted, unlistedText(problem, unlisted->layout), false);
    if (options.nearestMiss)
        out.plan->nearestMiss = nearestMiss(problem, chosen.layout);
    return out;
}

} // namespace bastewright
