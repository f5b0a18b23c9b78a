#include "planners/backing/front.h"

#include <algorithm>

namespace bastewright::backing {
namespace {

bool dominates(const Layout& a, const Layout& b) {
    return a.cost <= b.cost && a.seams <= b.seams && a.waste <= b.waste;
}

} // namespace

Front frontOf(const Problem& problem, const std::vector<Bolt>& bolts) {
    Front front;
    front.priced = std::ranges::all_of(problem.rules.fabrics,
                                       [](const Fabric& f) { return !f.buyable || f.price > 0; });
    const std::vector<Layout> layouts = layoutsOf(problem, bolts);
    for (const Layout& l : layouts) {
        const bool beaten = std::ranges::any_of(
            front.choices, [&](const Choice& c) { return dominates(c.layout, l); });
        if (beaten && front.runnerUp)
            continue;
        auto arrangement = arrange(problem, bolts, l, true);
        const bool keepsAway = arrangement.has_value();
        if (!arrangement && !problem.keepAway.empty())
            arrangement = arrange(problem, bolts, l, false);
        if (!arrangement)
            continue;
        if (!front.choices.empty() && !front.runnerUp)
            front.runnerUp = l;
        if (!beaten)
            front.choices.push_back({l, std::move(*arrangement), keepsAway});
    }
    if (front.choices.empty() || front.choices.front().keepsAway)
        return front;
    // The lines cost no cloth, but they may cost waste or a seam.
    for (const Layout& l : layouts) {
        if (l.cost > front.choices.front().layout.cost)
            break;
        if (auto arrangement = arrange(problem, bolts, l, true)) {
            front.choices.insert(front.choices.begin(), {l, std::move(*arrangement), true});
            break;
        }
    }
    return front;
}

std::optional<Layout> bestOf(const Problem& problem) {
    const auto bolts = boltsOf(problem.rules);
    for (Layout& l : layoutsOf(problem, bolts))
        if (arrange(problem, bolts, l, false))
            return std::move(l);
    return std::nullopt;
}

} // namespace bastewright::backing
