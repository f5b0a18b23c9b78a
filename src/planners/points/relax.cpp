#include "planners/points/relax.h"

#include "planners/points/cell.h"

namespace bastewright::points {

void relax(Spots& points, const Rules& rules, const PlaceMap& map, int sweeps,
           const Field& within) {
    Buckets near{rules.top(), rules.radius};
    for (std::size_t i = 0; i < points.size(); ++i)
        near.add(static_cast<int>(i), points[i]);
    const double enough = squared(rules.radius - 2e-6);
    Spots cell, scratch;
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        bool reached = true, moved = false;
        for (std::size_t i = 0; i < points.size(); ++i) {
            if (!within.contains(points[i]))
                continue;
            const int id = static_cast<int>(i);
            cellOf(id, points[i], near, rules.top(), 2 * rules.radius, cell, scratch);
            if (cell.empty())
                continue;
            const double now = farthestFrom(points[i], cell);
            reached &= now <= enough;
            const Spot middle = middleOfSmallestCircle(cell);
            Spot best = points[i];
            double least = now - 1e-4;
            map.eachNear(middle, std::min(map.away(middle) + map.pitch(), map.reach()),
                         [&](Spot s) {
                             if (const double f = farthestFrom(s, cell); f < least) {
                                 least = f;
                                 best = s;
                             }
                         });
            if (best == points[i])
                continue;
            near.remove(id, points[i]);
            near.add(id, best);
            points[i] = best;
            moved = true;
        }
        if (reached || !moved)
            return;
    }
}

} // namespace bastewright::points
