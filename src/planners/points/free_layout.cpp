#include "planners/points/free_layout.h"

#include "planners/points/buckets.h"
#include "planners/points/even_out.h"
#include "planners/points/row_layout.h"
#include "planners/points/window_search.h"

#include <algorithm>

namespace bastewright::points {
namespace {

/// Candidates on the whole top that the search window by window can hold;
/// larger tops keep their start.
constexpr double kMostCandidates = 400'000;

Spots snapped(const Rules& rules, const Spots& wanted) {
    Spots out;
    Buckets taken{rules.top(), rules.spacing};
    for (const Spot w : wanted) {
        const Field near = Field{w.x, w.y, w.x, w.y}.grown(rules.step + 0.35 * rules.spacing);
        const Spot* best = nullptr;
        const Spots places = rules.places(near);
        for (const Spot& s : places) {
            if (best && distanceSquared(s, w) >= distanceSquared(*best, w) - 1e-9)
                continue;
            if (!taken.anyNear(s, rules.gap - 1e-7, [](int, Spot) { return true; }))
                best = &s;
        }
        if (best) {
            taken.add(0, *best);
            out.push_back(*best);
        }
    }
    return out;
}

} // namespace

Layout snappedRows(const Rules& rules) {
    Rules plain = rules;
    plain.pin = rules.pin.withoutSeams();
    Layout out;
    if (const auto rows = rowLayout(plain, 0, {}))
        for (const Spot s : snapped(rules, rows->layout.spots()))
            out.pins.push_back({s, true});
    fill(out, rules, 100);
    repair(out, rules, 100);
    prune(out, rules);
    return out;
}

Layout freeLayout(const Rules& rules, Layout start, int effort, std::stop_token stop) {
    if (effort <= 0 || stop.stop_requested() ||
        rules.top().area() > kMostCandidates * squared(rules.step))
        return start;
    if (rules.pin.seamless())
        start = evenedOut(rules, std::move(start), effort, stop);
    WindowSearch search{rules, start};
    Dice dice{1};
    for (int pass = 0; pass < 5 * effort && !stop.stop_requested(); ++pass)
        search.pass(4 * rules.spacing, 600, dice, stop);
    return search.layout();
}

} // namespace bastewright::points
