#include "planners/passes/zones.h"

#include <cmath>

namespace bastewright {
namespace {
constexpr Length kPersonWidth = Length::inches(24);
}

Rect workBox(const Zone& zone) {
    if (zone.points.empty())
        return zone.area;
    const Point first = zone.points.front().at;
    Rect box{first.x, first.y, first.x, first.y};
    for (const PlacedPoint& p : zone.points)
        box = {std::min(box.x0, p.at.x), std::min(box.y0, p.at.y), std::max(box.x1, p.at.x),
               std::max(box.y1, p.at.y)};
    return box;
}

StandingPlace placeBefore(const Rect& box, Side side, const Rect& table) {
    const Interval edge = isAcross(side) ? table.x() : table.y();
    const Interval want = isAcross(side) ? box.x() : box.y();
    const Length width = std::min(kPersonWidth, edge.size());
    const Length lo = std::clamp(want.middle() - width / 2, edge.lo, edge.hi - width);
    return {side, {lo, lo + width}};
}

double reachNeededInches(const Rect& box, const StandingPlace& place, const Rect& table) {
    const bool across = isAcross(place.side);
    const Interval along = across ? box.x() : box.y();
    const Interval deep = across ? box.y() : box.x();
    const Length edge = place.side == Side::head   ? table.y0
                        : place.side == Side::foot ? table.y1
                        : place.side == Side::left ? table.x0
                                                   : table.x1;
    const Length aside = std::max({Length{}, place.along.lo - along.lo, along.hi - place.along.hi});
    const Length depth = std::max(abs(edge - deep.lo), abs(edge - deep.hi));
    return std::hypot(aside.in(), depth.in());
}

} // namespace bastewright
