#include "checker/geometry/segments.h"

#include "checker/geometry/spot.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace bastewright::check {
namespace {

double cross(Spot o, Spot a, Spot b) {
    return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
}

double toSegment(Spot p, Spot a, Spot b) {
    const double dx = b.x - a.x, dy = b.y - a.y;
    const double square = dx * dx + dy * dy;
    const double t =
        square > 0 ? std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / square, 0.0, 1.0) : 0.0;
    return std::hypot(a.x + t * dx - p.x, a.y + t * dy - p.y);
}

bool crossing(Spot a, Spot b, Spot c, Spot d) {
    return (cross(a, b, c) > 0) != (cross(a, b, d) > 0) &&
           (cross(c, d, a) > 0) != (cross(c, d, b) > 0);
}

Interval span(Length a, Length b) {
    return {std::min(a, b), std::max(a, b)};
}

} // namespace

Segment pinSegment(const PlacedPoint& pin, Length length) {
    const double angle = pin.angle * std::numbers::pi / 180;
    const Length dx = Length::nearestInches(length.in() / 2 * std::cos(angle));
    const Length dy = Length::nearestInches(length.in() / 2 * std::sin(angle));
    return {{pin.at.x - dx, pin.at.y - dy}, {pin.at.x + dx, pin.at.y + dy}};
}

Length distanceWithin(const Segment& first, const Segment& second, Length enough) {
    const Interval ax = span(first.from.x, first.to.x), ay = span(first.from.y, first.to.y);
    const Interval bx = span(second.from.x, second.to.x), by = span(second.from.y, second.to.y);
    if (ax.hi + enough <= bx.lo || bx.hi + enough <= ax.lo || ay.hi + enough <= by.lo ||
        by.hi + enough <= ay.lo)
        return enough;
    const Spot a = spot(first.from), b = spot(first.to), c = spot(second.from), d = spot(second.to);
    if (crossing(a, b, c, d))
        return {};
    return Length::nearestInches(
        std::min({toSegment(a, c, d), toSegment(b, c, d), toSegment(c, a, b), toSegment(d, a, b)}));
}

} // namespace bastewright::check
