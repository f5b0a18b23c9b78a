#include "planners/passes/reach.h"

#include "planners/surface/closed_sides.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bastewright {
namespace {

/// Beyond this nobody reaches; keeps squares of nanometres within 64 bits.
constexpr Length kLongestArm = Length::inches(100);

Length edgeOf(const Rect& table, Side side) {
    switch (side) {
    case Side::head:
        return table.y0;
    case Side::foot:
        return table.y1;
    case Side::left:
        return table.x0;
    case Side::right:
        return table.x1;
    }
    return {};
}

Interval across(const Rect& box, Side side) {
    return isAcross(side) ? box.y() : box.x();
}
Interval alongOf(const Rect& box, Side side) {
    return isAcross(side) ? box.x() : box.y();
}

Length depth(const Rect& box, const Rect& table, Side side) {
    const Interval a = across(box, side);
    const Length edge = edgeOf(table, side);
    return std::max(abs(a.lo - edge), abs(a.hi - edge));
}

/// The whole part of sqrt(reach² − depth²), exactly: how far along the edge an arm still goes.
Length sideways(Length reach, Length deep) {
    const std::int64_t square = (reach.nm() - deep.nm()) * (reach.nm() + deep.nm());
    auto root = static_cast<std::int64_t>(std::sqrt(static_cast<double>(square)));
    while (root > 0 && root * root > square)
        --root;
    while ((root + 1) * (root + 1) <= square)
        ++root;
    return Length::nanometres(root);
}

bool isClosed(const std::vector<Side>& closed, Side side) {
    return std::ranges::find(closed, side) != closed.end();
}

} // namespace

Rect workBox(const Zone& zone) {
    if (zone.points.empty())
        return zone.area;
    const Point first = zone.points.front().at;
    Rect box{first.x, first.y, first.x, first.y};
    for (const PlacedPoint& p : zone.points) {
        box.x0 = std::min(box.x0, p.at.x);
        box.x1 = std::max(box.x1, p.at.x);
        box.y0 = std::min(box.y0, p.at.y);
        box.y1 = std::max(box.y1, p.at.y);
    }
    return box;
}

Interval extent(const Rect& table, Side side) {
    return alongOf(table, side);
}

Length elbowRoom(const Rect& table, Side side) {
    return std::min(kElbowRoom, extent(table, side).size());
}

std::size_t placesAlong(Length side) {
    return std::max<std::size_t>(1, static_cast<std::size_t>(ratio(side, kElbowRoom)));
}

std::vector<SideRange> sidesFor(const Rect& box, const Rect& table, const std::vector<Side>& closed,
                                Length reach, bool limited) {
    std::vector<SideRange> found;
    const Length arm = std::min(reach, kLongestArm);
    for (const Side side : kSides) {
        if (isClosed(closed, side))
            continue;
        const Interval edge = extent(table, side);
        const Length room = elbowRoom(table, side);
        Interval start{edge.lo, edge.hi - room};
        if (limited) {
            const Length deep = depth(box, table, side);
            if (deep > arm)
                continue;
            const Length lean = sideways(arm, deep);
            const Interval b = alongOf(box, side);
            start = intersection(start, {b.hi - lean - room, b.lo + lean});
        }
        if (start.lo <= start.hi)
            found.push_back({side, start});
    }
    return found;
}

std::vector<SideRange> sidesFor(const Rect& box, const Rect& table, const SurfacePlan& surface,
                                const Helper& helper) {
    std::vector<SideRange> found =
        sidesFor(box, table, surface.closed, leaningReach(helper), !surface.floor);
    if (helper.side) {
        const std::array kept{*helper.side};
        const Side side = closedSides(kept, surface.quiltLengthAlongLength).front();
        std::erase_if(found, [&](const SideRange& r) { return r.side != side; });
    }
    return found;
}

std::optional<Length> leastReach(const Rect& box, const Rect& table,
                                 const std::vector<Side>& closed) {
    std::optional<Length> least;
    for (const Side side : kSides) {
        if (isClosed(closed, side))
            continue;
        // The interval is best centred on the box; what of the box it does not cover is leant over.
        const Interval edge = extent(table, side), b = alongOf(box, side);
        const Length room = elbowRoom(table, side);
        const Length lo =
            std::clamp(b.middle() - room / 2, edge.lo, std::max(edge.lo, edge.hi - room));
        const Length lean = std::max({Length{}, lo - b.lo, b.hi - (lo + room)});
        const double need = std::hypot(depth(box, table, side).in(), lean.in());
        const Length reach = Length::nearestInches(need);
        if (!least || reach < *least)
            least = reach;
    }
    return least;
}

} // namespace bastewright
