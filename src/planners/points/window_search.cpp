#include "planners/points/window_search.h"

#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {

WindowSearch::WindowSearch(const Rules& rules, const Layout& start)
    : rules_{rules}
    , search_{rules.top().grown(rules.radius), rules.radius, rules.gap} {
    Buckets known{rules.top(), rules.spacing};
    for (const Spot s : rules.places(rules.top()))
        known.add(search_.addCandidate(s, 1), s);
    for (const auto& pin : start.pins) {
        int id = -1;
        known.eachNear(pin.at, 1e-7, [&](int c, Spot) { id = c; });
        if (id < 0)
            id = search_.addCandidate(pin.at, 1);
        if (!search_.chosen(id))
            search_.choose(id);
    }
    const Field& f = rules.top();
    const int nx = static_cast<int>(std::ceil(f.width() / (rules.radius / 2.6)));
    const int ny = static_cast<int>(std::ceil(f.length() / (rules.radius / 2.6)));
    for (int j = 0; j <= ny; ++j)
        for (int i = 0; i <= nx; ++i) {
            const double u = j % 2 == 1 && i > 0 && i < nx ? i - 0.5 : i;
            search_.addWitness({f.x0 + f.width() * u / nx, f.y0 + f.length() * j / ny});
        }
}

void WindowSearch::improve(const Field& window, int steps, Dice& dice, std::stop_token stop) {
    const Field& top = rules_.top();
    const Field seen = window.grown(rules_.radius);
    const Field judged{std::max(seen.x0, top.x0), std::max(seen.y0, top.y0),
                       std::min(seen.x1, top.x1), std::min(seen.y1, top.y1)};
    const auto judge = [&](CoverSearch& search) {
        Spots all;
        search.chosenBuckets().eachIn(judged.grown(rules_.radius),
                                      [&](int, Spot p) { all.push_back(p); });
        bool complete = true;
        for (const Spot w : holes(all, judged, rules_.radius))
            complete &= !search.addWitness(w);
        return complete;
    };
    const auto start = search_.choice();
    CoverSearch::Limits fewer;
    fewer.steps = steps;
    fewer.window = window;
    auto result = search_.search(fewer, dice, judge, stop);
    if (!result.found) {
        search_.restore(start);
        return;
    }
    CoverSearch::Limits other = fewer;
    other.steps = steps / 3;
    other.below = result.cost + 1;
    std::vector<int> last = result.choice;
    int lastCost = result.cost;
    other.keepEqual = true;
    other.onFound = [&](const std::vector<int>& choice, int cost) {
        if (cost <= lastCost) {
            last = choice;
            lastCost = cost;
        }
        return true;
    };
    search_.search(other, dice, judge, stop);
    search_.restore(last);
}

int WindowSearch::pass(double windowSize, int steps, Dice& dice, std::stop_token stop) {
    const int before = size();
    const double stride = 0.75 * windowSize;
    const auto offset = [&] { return static_cast<double>(dice.below(1000)) / 1000 * stride; };
    const Field& top = rules_.top();
    const double ox = offset(), oy = offset();
    for (double y = top.y0 - oy; y < top.y1; y += stride)
        for (double x = top.x0 - ox; x < top.x1; x += stride) {
            if (stop.stop_requested())
                return before - size();
            improve({x, y, x + windowSize, y + windowSize}, steps, dice, stop);
        }
    return before - size();
}

Layout WindowSearch::layout() const {
    Layout out;
    for (const int c : search_.choice())
        out.pins.push_back({search_.places(c).front(), true});
    return out;
}

} // namespace bastewright::points
