#include "checker/geometry/standing_reach.h"

#include <cmath>

namespace bastewright::check {

Interval extent(const Rect& table, Side side) {
    return isAcross(side) ? table.x() : table.y();
}

Length standingWidth(const Rect& table, Side side) {
    return std::min(Length::inches(24), extent(table, side).size());
}

double reachNeeded(const Rect& table, Side side, Interval along, const Rect& box) {
    const Length edge = side == Side::head   ? table.y0
                        : side == Side::foot ? table.y1
                        : side == Side::left ? table.x0
                                             : table.x1;
    double farthest = 0;
    for (const Point corner : {Point{box.x0, box.y0}, Point{box.x1, box.y0}, Point{box.x0, box.y1},
                               Point{box.x1, box.y1}}) {
        const Length at = isAcross(side) ? corner.x : corner.y;
        const Length in = isAcross(side) ? corner.y : corner.x;
        const Length sideways = at - std::clamp(at, along.lo, std::max(along.lo, along.hi));
        farthest = std::max(farthest, std::hypot(sideways.in(), (in - edge).in()));
    }
    return farthest;
}

double leastReachNeeded(const Rect& table, Side side, const Rect& box) {
    const Interval whole = extent(table, side);
    const Length width = standingWidth(table, side);
    const Length middle = isAcross(side) ? box.middle().x : box.middle().y;
    // Stretching sideways is least with the place centred on the box, as far as the side allows.
    const Length lo = std::clamp(middle - width / 2, whole.lo, whole.hi - width);
    return reachNeeded(table, side, {lo, lo + width}, box);
}

} // namespace bastewright::check
