#include "planners/surface/reachable.h"

#include "planners/surface/closed_sides.h"
#include "ways/way.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bastewright {
namespace {

bool isClosed(const std::vector<Side>& closed, Side side) {
    return std::ranges::find(closed, side) != closed.end();
}

/// Distances found with squares and roots.
constexpr double kRounding = 1e-6;

std::optional<ReachKind> kindAt(const Helper& helper, double inches) {
    if (inches <= helper.reach.in() + kRounding)
        return ReachKind::easy;
    if (inches <= leaningReach(helper).in() + kRounding)
        return ReachKind::leaning;
    return {};
}

} // namespace

Length leaningReach(const Helper& helper) {
    return helper.seated ? helper.reach : helper.reach + helper.lean;
}

Length depthFrom(Point place, const Rect& table, Side side) {
    switch (side) {
    case Side::head:
        return place.y - table.y0;
    case Side::foot:
        return table.y1 - place.y;
    case Side::left:
        return place.x - table.x0;
    case Side::right:
        break;
    }
    return table.x1 - place.x;
}

std::optional<Length> nearestDepth(Point place, const Rect& table, std::span<const Side> sides) {
    std::optional<Length> out;
    for (const Side side : sides)
        if (const Length depth = depthFrom(place, table, side); !out || depth < *out)
            out = depth;
    return out;
}

std::optional<ReachKind> reachFrom(const Helper& helper, Point place, const Rect& table, Side side,
                                   Interval stretch) {
    const Length at = isAcross(side) ? place.x : place.y;
    const Length beside = at - std::clamp(at, stretch.lo, std::max(stretch.lo, stretch.hi));
    const double deep = std::abs(depthFrom(place, table, side).in());
    // Most places are in front of somebody, or too deep wherever they are.
    if (beside == Length{} || deep > leaningReach(helper).in() + kRounding)
        return kindAt(helper, deep);
    return kindAt(helper, std::hypot(deep, beside.in()));
}

std::optional<ReachKind> reachOf(const Helper& helper, Point place, const Rect& table,
                                 const std::vector<Side>& closed) {
    std::optional<ReachKind> best;
    for (const Side side : kSides) {
        if (isClosed(closed, side))
            continue;
        const auto here =
            reachFrom(helper, place, table, side, isAcross(side) ? table.x() : table.y());
        if (here && (!best || *here < *best))
            best = here;
    }
    return best;
}

std::optional<ReachKind> reachOf(const Helper& helper, Point place, const Rect& table,
                                 const SurfacePlan& surface) {
    if (surface.floor)
        return ReachKind::easy;
    if (!helper.side)
        return reachOf(helper, place, table, surface.closed);
    const std::array kept{*helper.side};
    const Side side = closedSides(kept, surface.quiltLengthAlongLength).front();
    if (isClosed(surface.closed, side))
        return {};
    return reachFrom(helper, place, table, side, isAcross(side) ? table.x() : table.y());
}

Length easyReach(std::span<const Helper> helpers) {
    if (helpers.empty())
        return Helper{}.reach;
    Length most;
    for (const Helper& h : helpers)
        most = std::max(most, h.reach);
    return most;
}

Length farthestReach(std::span<const Helper> helpers, Basting::With with) {
    std::optional<Length> most;
    for (const Helper& h : helpers) {
        const bool works = h.pins && wayOf(with).finishes(h);
        if (works && (!most || leaningReach(h) > *most))
            most = leaningReach(h);
    }
    if (!most)
        for (const Helper& h : helpers)
            if (!most || leaningReach(h) > *most)
                most = leaningReach(h);
    return most.value_or(leaningReach(Helper{}));
}

Rect outOfReach(const Rect& table, const std::vector<Side>& closed, Length reach) {
    Rect rest = table;
    if (!isClosed(closed, Side::head))
        rest.y0 += reach;
    if (!isClosed(closed, Side::foot))
        rest.y1 -= reach;
    if (!isClosed(closed, Side::left))
        rest.x0 += reach;
    if (!isClosed(closed, Side::right))
        rest.x1 -= reach;
    return rest.empty() ? Rect{} : rest;
}

} // namespace bastewright
