#include "checker/rules/packs.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <span>

namespace bastewright::check {
namespace {

using Ways = std::vector<BackingAlternative>;

/// Where a fabric stands in the job's list.
std::ptrdiff_t turnOf(const QuiltView& v, std::string_view fabric) {
    const auto& all = v.job.backing.fabrics;
    return std::ranges::find(all, fabric, &Fabric::name) - all.begin();
}

/// The number of a panel's name: 2 of "2a"; 0 where it has none.
int numberOf(const std::string& name) {
    return std::atoi(name.c_str());
}

/// The lengths that price and seam_worth are given for: yards or metres.
double inches(const QuiltView& v) {
    return v.job.unit == Unit::inch ? 36.0 : 1000 / 25.4;
}

/// Prices of the fabrics that may be bought; none where one has none.
std::vector<double> prices(const QuiltView& v) {
    std::vector<double> out;
    for (const Fabric& f : v.job.backing.fabrics)
        if (f.buyable)
            out.push_back(f.price);
    if (out.empty() || std::ranges::min(out) <= 0)
        return {};
    return out;
}

/// What is cut into and is not in the backing, in square inches of cloth as wide as it is sold: all
/// that is bought, and of a length on hand as far as it is cut.
double wasteOf(const QuiltView& v) {
    const BackingPlan& plan = *v.quilt.backing;
    std::map<std::string, double> ends; // of what is cut from the length on hand
    for (const ClothCut& cut : plan.cuts)
        if (cut.onHand)
            ends[cut.fabric] = std::max(ends[cut.fabric], cut.onCloth.y1.in());
    double area = 0;
    const auto widthOf = [&](const std::string& name) {
        const auto& all = v.job.backing.fabrics;
        const auto at = std::ranges::find(all, name, &Fabric::name);
        return (at == all.end() ? Fabric{}.usableWidth : at->usableWidth).in();
    };
    for (const auto& [name, end] : ends)
        area += end * widthOf(name);
    for (const BackingPurchase& b : plan.buy)
        area += b.length.in() * widthOf(b.fabric);
    for (const BackingPanel& p : plan.panels)
        area -= areaSquareInches(p.area);
    return area;
}

/// True where so many steps of cloth, each at one of these prices, come to `cost`.
bool comesTo(double cost, std::int64_t steps, std::span<const double> aStep) {
    if (aStep.size() == 1)
        return std::abs(double(steps) * aStep[0] - cost) < 0.001;
    for (std::int64_t of = 0; of <= steps; ++of)
        if (comesTo(cost - double(of) * aStep[0], steps - of, aStep.subspan(1)))
            return true;
    return false;
}

/// True where cloth of this length can cost so much. Of more than three prices nearly everything
/// between the least and the most can be made, so no more is asked.
bool maySell(const QuiltView& v, Length bought, double cost) {
    std::vector<double> aStep = prices(v);
    if (aStep.empty())
        return std::abs(cost) < 0.001;
    for (double& price : aStep)
        price *= soldBy(v).in() / inches(v);
    std::ranges::sort(aStep);
    const auto same = std::ranges::unique(aStep);
    aStep.erase(same.begin(), same.end());
    const std::int64_t steps = bought.nm() / soldBy(v).nm();
    if (aStep.size() > 3)
        return cost > double(steps) * aStep.front() - 0.001 &&
               cost < double(steps) * aStep.back() + 0.001;
    return comesTo(cost, steps, aStep);
}

} // namespace

void backingWays(const QuiltView& v, Report& report) {
    if (!v.quilt.backing || v.quilt.backing->alternatives.empty())
        return;
    const BackingPlan& plan = *v.quilt.backing;
    const Unit unit = v.plan.unit;
    if (std::ranges::count(plan.alternatives, true, &BackingAlternative::chosen) != 1) {
        report.add(where(v) / "backing/alternatives",
                   v.label() + ": not just one way to piece the backing is the chosen one.");
        return;
    }
    const BackingAlternative& chosen =
        *std::ranges::find(plan.alternatives, true, &BackingAlternative::chosen);
    Length all{};
    for (const BackingPurchase& p : plan.buy)
        all += p.length;
    if (abs(all - chosen.bought) > kFine)
        report.add(where(v).in("backing/alternatives", plan.alternatives, chosen) / "bought",
                   v.label() + ": the chosen way buys " + figure(chosen.bought, unit) +
                       " of cloth; the plan buys " + figure(all, unit) + ".");
    const auto& asked = v.job.backing.way;
    if (asked && !v.tells(Finding::Kind::backingWayGone)) {
        if (abs(chosen.bought - asked->bought) > kFine || chosen.seams != asked->seams)
            report.add(where(v).in("backing/alternatives", plan.alternatives, chosen),
                       v.label() + ": the job asks for the way that buys " +
                           figure(asked->bought, unit) + " and has " +
                           std::to_string(asked->seams) +
                           " seams; the plan takes another and does not say so.");
        return;
    }
    // Money where every fabric that may be bought has a price, and a seam then in the cheapest.
    const std::vector<double> money = prices(v);
    const double perInch = money.empty() ? 1 : std::ranges::min(money) / inches(v);
    const auto score = [&](const BackingAlternative& a) {
        return (money.empty() ? a.bought.in() : a.cost) +
               a.seams * v.job.backing.seamWorth.in() * perInch;
    };
    for (const BackingAlternative& a : plan.alternatives)
        if (a.wanted.empty() && score(a) < score(chosen) - 1e-6)
            report.add(where(v).in("backing/alternatives", plan.alternatives, a),
                       v.label() + ": a way that buys " + figure(a.bought, unit) + " with " +
                           std::to_string(a.seams) +
                           " seams is offered beside the one chosen, which "
                           "buys " +
                           figure(chosen.bought, unit) + " with " + std::to_string(chosen.seams) +
                           ".");
}

// The chosen way is the plan's in every figure; of the others the figures go together.
void backingListed(const QuiltView& v, Report& report) {
    const auto& made = v.quilt.backing;
    const bool measured = v.job.backing.width && v.job.backing.length;
    if (!made) {
        const bool said = v.tells(Finding::Kind::fabricShort) || v.tells(Finding::Kind::input);
        if (!measured && !said && !v.quilt.passes.empty())
            report.add(where(v) / "backing", v.label() + ": no backing is planned.");
        return;
    }
    std::set<std::string> cut;
    for (const ClothCut& c : made->cuts)
        cut.insert(c.fabric);
    if (made->toBring.size() != cut.size())
        report.add(where(v) / "backing/to_bring",
                   v.label() + ": " + std::to_string(cut.size()) + " fabrics are cut, and " +
                       std::to_string(made->toBring.size()) + " are on the list to bring.");
    const Ways& all = made->alternatives;
    if (all.empty() && !made->panels.empty() && !v.stopped())
        report.add(where(v) / "backing/alternatives",
                   v.label() + ": no way to piece the backing is listed.");
    const auto money = prices(v);
    const double step = inches(v);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const BackingAlternative& a = all[i];
        const std::string what =
            v.label() + ": way no. " + std::to_string(i + 1) + " to piece the backing ";
        const Pointer there = where(v) / "backing/alternatives" / i;
        if (a.bought < Length{} || a.bought.nm() % soldBy(v).nm() != 0)
            report.add(there / "bought", what + "buys " + figure(a.bought, v.plan.unit) + ".");
        if (a.seams < 0 || a.seams > 24 || a.waste < 0)
            report.add(there, what + "has " + std::to_string(a.seams) + " seams and wastes " +
                                  figure(a.waste) + " square inches.");
        if (!maySell(v, a.bought, a.cost))
            report.add(there / "cost", what + "costs " + figure(a.cost) + ", which " +
                                           figure(a.bought, v.plan.unit) +
                                           " of the fabrics cannot come to.");
        for (std::size_t k = 0; k < i; ++k)
            if (a == all[k])
                report.add(there, what + "is listed twice.");
        if (a.chosen && i > 0 && !v.job.backing.way)
            report.add(there / "chosen", what + "is the chosen one, and not the first.");
        if (!a.chosen)
            continue;
        if (a.along != made->along)
            report.add(there / "direction", what + "lies the other way than the plan's.");
        if (a.seams != std::ssize(made->panels) - 1)
            report.add(there / "seams", what + "has " + std::to_string(a.seams) +
                                            " seams; the plan sews " +
                                            std::to_string(made->panels.size()) + " panels.");
        double cost = 0;
        for (const BackingPurchase& b : made->buy)
            for (const Fabric& f : v.job.backing.fabrics)
                if (f.name == b.fabric && !money.empty())
                    cost += f.price * b.length.in() / step;
        if (std::abs(cost - a.cost) > 0.001)
            report.add(there / "cost", what + "costs " + figure(a.cost) + "; the plan buys for " +
                                           figure(cost) + ".");
        if (std::abs(a.waste - wasteOf(v)) > 0.1)
            report.add(there / "waste", what + "wastes " + figure(a.waste) +
                                            " square inches; the plan " + figure(wasteOf(v)) + ".");
    }
    for (std::size_t i = 2; i < all.size(); ++i) // those that need what is not there come last
        if (all[i].wanted.empty() && !all[i - 1].wanted.empty())
            report.add(where(v) / "backing/alternatives" / i,
                       v.label() + ": a way to piece the backing with fabric that is listed comes "
                                   "after one that needs another.");
}

// Panels in the turn of their numbers, purchases and cuts as the job lists the fabrics, on a cloth
// from its beginning.
void backingOrder(const QuiltView& v, Report& report) {
    if (!v.quilt.backing)
        return;
    const BackingPlan& plan = *v.quilt.backing;
    const auto inTurn = [&](const char* key, const auto& list, auto turn, const char* what) {
        for (std::size_t i = 1; i < list.size(); ++i)
            if (turn(list[i]) < turn(list[i - 1])) {
                report.add(where(v) / "backing" / key / i,
                           v.label() + ": " + what + " no. " + std::to_string(i + 1) +
                               " comes before the one it is listed after.");
                return;
            }
    };
    int last = 0; // numbers appear in their turn; halves of a length share one
    for (const BackingPanel& p : plan.panels)
        if (const int number = numberOf(p.name); number > last + 1)
            report.add(where(v).in("backing/panels", plan.panels, p) / "name",
                       v.label() + ": panel '" + p.name + "' comes after no. " +
                           std::to_string(last) + ".");
        else
            last = std::max(last, number);
    inTurn(
        "buy", plan.buy, [&](const BackingPurchase& b) { return turnOf(v, b.fabric); }, "fabric");
    inTurn(
        "cuts", plan.cuts,
        [&](const ClothCut& c) {
            return std::tuple{turnOf(v, c.fabric), !c.onHand, c.onCloth.y0, c.onCloth.x0};
        },
        "cut");
}

} // namespace bastewright::check
