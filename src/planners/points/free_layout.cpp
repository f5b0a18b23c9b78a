#include "planners/points/free_layout.h"

#include "planners/points/even_out.h"
#include "planners/points/lattice_search.h"
#include "planners/points/window_search.h"

#include <algorithm>

namespace bastewright::points {
namespace {

/// Candidates on the whole top that the search window by window can hold;
/// larger tops keep their start.
constexpr double kMostCandidates = 400'000;

/// A covering of the whole top.
struct Covering {
    int cost = 0;
    Spots at;
};

void keepCheapest(std::vector<Covering>& of, std::size_t most) {
    std::stable_sort(of.begin(), of.end(),
                     [](const Covering& a, const Covering& b) { return a.cost < b.cost; });
    if (of.size() > most)
        of.resize(most);
}

Layout looseAt(const Spots& spots) {
    Layout out;
    for (const Spot s : spots)
        out.pins.push_back({s, true});
    return out;
}

/// What no allowed place reaches is reached by points that breach their rule least.
Spots mended(const Spots& spots, const Rules& rules) {
    Layout layout = looseAt(spots);
    repair(layout, rules, 100);
    prune(layout, rules);
    return layout.spots();
}

} // namespace

Layout freeLayout(const Rules& rules, Layout start, int effort, bool glance, std::stop_token stop) {
    if (effort <= 0 || stop.stop_requested() ||
        rules.top().area() > kMostCandidates * squared(rules.step))
        return start;
    if (rules.pin.seamless())
        start = evenedOut(rules, std::move(start), effort, stop);
    const PlaceMap map{rules};
    WindowSearch search{rules, map};
    std::vector<Covering> best;
    const double size = 4 * rules.spacing;
    Dice dice{1};

    for (const Lattice& lattice : suitableLattices(rules, map, effort, glance, stop)) {
        if (stop.stop_requested())
            break;
        search.begin(laidOn(lattice, rules, map));
        best.push_back({search.cost(), search.spots()});
    }
    keepCheapest(best, 3);
    // From here on places that breach a rule take part.
    for (Covering& c : best)
        if (!search.begin(c.at)) {
            c.at = mended(c.at, rules);
            search.take(c.at);
            c.cost = search.cost();
        }
    search.take(start.spots());
    best.push_back({search.cost(), search.spots()});
    keepCheapest(best, glance ? 1 : 3);
    for (Covering& c : best) {
        search.take(c.at);
        search.pass(size, 300, dice, stop);
        c = {search.cost(), search.spots()};
    }
    keepCheapest(best, 1);
    search.take(best.front().at);
    for (int pass = 0; pass < (glance ? 1 : 4 * effort) && !stop.stop_requested(); ++pass)
        if (search.pass(size, 600, dice, stop) == 0)
            break;
    return looseAt(search.spots());
}

} // namespace bastewright::points
