#include "planners/crew/reaching.h"

#include "planners/surface/closed_sides.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

Interval extentOf(std::span<const PlacedPoint> points, Side side) {
    Interval out{Length::inches(1'000'000), -Length::inches(1'000'000)};
    for (const PlacedPoint& p : points) {
        const Length at = isAcross(side) ? p.at.x : p.at.y;
        out = {std::min(out.lo, at), std::max(out.hi, at)};
    }
    return out;
}

} // namespace

Interval sideOf(const Rect& table, Side side) {
    return isAcross(side) ? table.x() : table.y();
}

Length roomAt(const Rect& table, Side side) {
    return std::min(kRoom, sideOf(table, side).size());
}

std::optional<ReachKind> reaching(const Helper& helper, const Rect& table,
                                  std::span<const StandingPlace> places, Point point) {
    std::optional<ReachKind> best;
    for (const StandingPlace& p : places) {
        const auto one = reachFrom(helper, point, table, p.side, p.along);
        if (one == ReachKind::easy)
            return one;
        if (one)
            best = one;
    }
    return best;
}

std::optional<int> leanings(const Helper& helper, const Rect& table, const StandingPlace& place,
                            std::span<const PlacedPoint> points, bool limited) {
    int out = 0;
    if (!limited)
        return out;
    for (const PlacedPoint& p : points) {
        const auto one = reachFrom(helper, p.at, table, place.side, place.along);
        if (!one)
            return {};
        out += *one == ReachKind::leaning ? 1 : 0;
    }
    return out;
}

StandingPlace inFront(const Rect& table, const StandingPlace& within,
                      std::span<const PlacedPoint> points) {
    const Length room = std::min(roomAt(table, within.side), within.along.size());
    Interval at = intersection(extentOf(points, within.side), within.along);
    if (at.hi < at.lo) { // beside all of it
        const Length lo = std::clamp(at.lo, within.along.lo, within.along.hi);
        at = {lo, lo};
    }
    if (at.size() < room) {
        const Length lo =
            std::clamp(at.middle() - room / 2, within.along.lo, within.along.hi - room);
        at = {lo, lo + room};
    }
    return {within.side, at};
}

std::optional<StandingPlace> bestPlace(const Helper& helper, const Rect& table,
                                       std::span<const StandingPlace> within,
                                       std::span<const PlacedPoint> points, bool limited) {
    std::optional<StandingPlace> best;
    int bestLeaning = 0;
    Length bestDeep;
    for (const StandingPlace& w : within) {
        const StandingPlace at = inFront(table, w, points);
        const auto leaning = leanings(helper, table, at, points, limited);
        if (!leaning)
            continue;
        Length deep;
        for (const PlacedPoint& p : points)
            deep = std::max(deep, abs(depthFrom(p.at, table, w.side)));
        if (!best || std::pair{*leaning, deep} < std::pair{bestLeaning, bestDeep}) {
            best = at;
            bestLeaning = *leaning;
            bestDeep = deep;
        }
    }
    return best;
}

std::vector<StandingPlace> openSides(const Rect& table, const std::vector<Side>& closed) {
    std::vector<StandingPlace> out;
    for (const Side side : bastewright::openSides(closed))
        out.push_back({side, sideOf(table, side)});
    return out;
}

} // namespace bastewright::crew
