#include "planners/points/window_search.h"

#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

constexpr int kBreachCost = 20;

} // namespace

WindowSearch::WindowSearch(const Rules& rules, const PlaceMap& map)
    : rules_{rules}
    , map_{map}
    , search_{rules.top().grown(rules.radius), rules.radius, rules.gap}
    , known_{rules.top(), rules.spacing / 4} {
    map.eachIn(rules.top(), std::max(rules.step, map.pitch()), [&](Spot s) { candidateAt(s); });
    const Field& f = rules.top();
    const int nx = static_cast<int>(std::ceil(f.width() / (rules.radius / 2.6)));
    const int ny = static_cast<int>(std::ceil(f.length() / (rules.radius / 2.6)));
    for (int j = 0; j <= ny; ++j)
        for (int i = 0; i <= nx; ++i) {
            const double u = j % 2 == 1 && i > 0 && i < nx ? i - 0.5 : i;
            require({f.x0 + f.width() * u / nx, f.y0 + f.length() * j / ny});
        }
}

int WindowSearch::candidateAt(Spot at) {
    int id = -1;
    known_.eachNear(at, 1e-7, [&](int c, Spot) { id = c; });
    if (id < 0) {
        id = search_.addCandidate(at, rules_.pin.angleAt(at) ? 1 : kBreachCost);
        known_.add(id, at);
    }
    return id;
}

/// True where the place is now a witness. What the coarse raster does not reach, the finest may.
bool WindowSearch::require(Spot witness) {
    if (search_.addWitness(witness))
        return true;
    map_.eachNear(witness, rules_.radius, [&](Spot s) { candidateAt(s); });
    return search_.addWitness(witness);
}

bool WindowSearch::judge(const Field& field) {
    Spots all;
    search_.chosenBuckets().eachIn(field.grown(rules_.radius),
                                   [&](int, Spot p) { all.push_back(p); });
    bool complete = true;
    for (const Spot w : holes(all, field, rules_.radius))
        complete &= !require(w);
    return complete;
}

bool WindowSearch::begin(const Spots& at) {
    search_.restore({});
    for (const Spot s : at)
        if (const int id = candidateAt(s); !search_.chosen(id) && !search_.clashes(id))
            search_.choose(id);
    for (int round = 0; round < 30; ++round) {
        search_.complete();
        search_.dropSpare();
        if (judge(rules_.top()))
            break;
    }
    return covered(spots(), rules_.top(), rules_.radius);
}

void WindowSearch::take(const Spots& at) {
    search_.restore({});
    for (const Spot s : at)
        if (const int id = candidateAt(s); search_.cost(id) >= kBreachCost)
            search_.keep(id);
        else if (!search_.chosen(id))
            search_.choose(id);
    judge(rules_.top());
}

void WindowSearch::improve(const Field& window, int steps, Dice& dice, std::stop_token stop) {
    const Field& top = rules_.top();
    const Field seen = window.grown(rules_.radius);
    const Field judged{std::max(seen.x0, top.x0), std::max(seen.y0, top.y0),
                       std::min(seen.x1, top.x1), std::min(seen.y1, top.y1)};
    const auto judgeWindow = [&](CoverSearch&) { return judge(judged); };
    const auto start = search_.choice();
    CoverSearch::Limits fewer;
    fewer.steps = steps;
    fewer.window = window;
    auto result = search_.search(fewer, dice, judgeWindow, stop);
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
    search_.search(other, dice, judgeWindow, stop);
    search_.restore(last);
}

int WindowSearch::pass(double windowSize, int steps, Dice& dice, std::stop_token stop) {
    const int before = cost();
    const double stride = 0.75 * windowSize;
    const auto offset = [&] { return static_cast<double>(dice.below(1000)) / 1000 * stride; };
    const Field& top = rules_.top();
    const double ox = offset(), oy = offset();
    for (double y = top.y0 - oy; y < top.y1; y += stride)
        for (double x = top.x0 - ox; x < top.x1; x += stride) {
            if (stop.stop_requested())
                return before - cost();
            improve({x, y, x + windowSize, y + windowSize}, steps, dice, stop);
        }
    return before - cost();
}

Spots WindowSearch::spots() const {
    Spots out;
    for (const int c : search_.choice())
        out.push_back(search_.places(c).front());
    return out;
}

} // namespace bastewright::points
