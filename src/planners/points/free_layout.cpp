#include "planners/points/free_layout.h"

#include "planners/points/cover_task.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

/// Staggered rows that cover the top where nothing is in the way: the densest use of every point
/// (Kershner, American Journal of Mathematics 61, 1939). `turned`: rows run down instead of across.
Spots staggered(const Field& top, double radius, bool turned) {
    const double along = turned ? top.length() : top.width();
    const double across = turned ? top.width() : top.length();
    Spots out;
    // Points of a row at a distance g cover a band of half height h = √(R² − (g/2)²) wholly.
    const double g0 = radius * std::sqrt(3.0);
    const int perRow = std::max(1, static_cast<int>(std::ceil(along / g0)));
    const double g = along / perRow;
    const double h = std::sqrt(std::max(0.0, squared(radius) - squared(g / 2)));
    // Between staggered rows: h above one and R below the next.
    const int rows = std::max(1, static_cast<int>(std::ceil((across - 2 * h) / (h + radius))) + 1);
    const double pitch = rows > 1 ? (across - 2 * h) / (rows - 1) : 0;
    for (int j = 0; j < rows; ++j) {
        const double v = rows > 1 ? h + j * pitch : across / 2;
        const bool shifted = j % 2 == 1;
        for (int i = 0; i < perRow + (shifted ? 1 : 0); ++i) {
            const double u = (shifted ? i : i + 0.5) * g;
            out.push_back(turned ? Spot{top.x0 + v, top.y0 + u} : Spot{top.x0 + u, top.y0 + v});
        }
    }
    return out;
}

/// Each place moved to the nearest one that obeys the rule, where one is within reach.
Spots snapped(const Rules& rules, const Spots& wanted) {
    Spots out;
    for (const Spot w : wanted) {
        const Field near{w.x, w.y, w.x, w.y};
        Spot best{};
        double bestDistance = 1e9;
        for (const Spot s : rules.places(near.grown(1.5 * rules.step + 0.35 * rules.spacing)))
            if (const double d = distanceSquared(s, w); d < bestDistance - 1e-9) {
                const bool clash = std::any_of(out.begin(), out.end(), [&](Spot o) {
                    return distanceSquared(o, s) < squared(rules.gap - 1e-7);
                });
                if (!clash)
                    bestDistance = d, best = s;
            }
        if (bestDistance < 1e9)
            out.push_back(best);
    }
    return out;
}

} // namespace

Layout freeLayout(const Rules& rules, int effort, std::stop_token stop) {
    Layout best;
    for (const bool turned : {false, true}) {
        Layout next;
        for (const Spot s : snapped(rules, staggered(rules.top(), rules.radius, turned)))
            next.pins.push_back({s, true});
        repair(next, rules, 300 * (1 + effort));
        if (stop.stop_requested() && !best.pins.empty())
            break;
        prune(next, rules);
        if (best.pins.empty() || next.pins.size() < best.pins.size())
            best = std::move(next);
    }
    return best;
}

} // namespace bastewright::points
