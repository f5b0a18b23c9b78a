#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace bastewright::check {
namespace {

bool isOpen(const QuiltView& v, Side side) {
    const auto& closed = v.quilt.surface.closed;
    return std::ranges::find(closed, side) == closed.end();
}

/// From a place to the nearest side of the table where somebody can stand.
std::optional<Length> depth(const QuiltView& v, const Rect& table, Point at) {
    std::optional<Length> nearest;
    const PerSide<Length> away{.head = at.y - table.y0,
                               .foot = table.y1 - at.y,
                               .left = at.x - table.x0,
                               .right = table.x1 - at.x};
    for (const Side side : kSides)
        if (isOpen(v, side) && (!nearest || away[side] < *nearest))
            nearest = away[side];
    return nearest;
}

/// The deepest point of a plan, from the open side nearest to it.
Length deepestPoint(const QuiltView& v) {
    Length most;
    for (const Zone& z : v.quilt.zones) {
        const auto pass = std::ranges::find(v.quilt.passes, z.pass, &Pass::number);
        if (pass == v.quilt.passes.end())
            continue;
        for (const PlacedPoint& p : z.points)
            most = std::max(most, depth(v, pass->table, p.at).value_or(Length{}));
    }
    return most;
}

bool same(Length a, Length b) {
    return abs(a - b) <= kHalving;
}

} // namespace

void passesWays(const QuiltView& v, Report& report) {
    const auto found = std::ranges::find_if(v.quilt.alternatives, &Alternative::chosen);
    if (found == v.quilt.alternatives.end() || v.quilt.passes.empty())
        return;
    const Alternative& how = *found;
    const Pointer there = where(v).in("alternatives", v.quilt.alternatives, how);
    const Unit unit = v.plan.unit;
    const auto differs = [&](std::string_view key, const std::string& what, const std::string& said,
                             const std::string& is) {
        report.add(there / key, v.label() + ": the chosen way says " + what + " " + said +
                                    "; it is " + is + ".");
    };

    int lifts = 0, people = 1;
    double kilograms = 0;
    Length shifted, largest;
    for (const Pass& p : v.quilt.passes) {
        const Length here = abs(p.shift.dx) + abs(p.shift.dy);
        shifted += here;
        largest = std::max(largest, here);
        lifts += p.liftPeople > 1 ? 1 : 0;
        people = std::max(people, p.liftPeople);
        kilograms = std::max(kilograms, p.liftKilograms);
    }
    if (how.lifts != lifts)
        differs("lifts", "lifts", std::to_string(how.lifts), std::to_string(lifts));
    if (how.liftPeople != people)
        differs("lift_people", "people for a lift", std::to_string(how.liftPeople),
                std::to_string(people));
    if (std::abs(how.liftKilograms - kilograms) > 1e-6)
        differs("lift_kilograms", "kilograms lifted", figure(how.liftKilograms), figure(kilograms));
    if (!same(how.shifted, shifted))
        differs("shifted", "shifts together", figure(how.shifted, unit), figure(shifted, unit));
    if (!same(how.largestShift, largest))
        differs("largest_shift", "largest shift", figure(how.largestShift, unit),
                figure(largest, unit));
    if (v.quilt.surface.floor)
        return;

    if (const Length deepest = deepestPoint(v); how.reach + kFine < deepest)
        differs("reach", "the reach needed", figure(how.reach, unit),
                figure(deepest, unit) + " at the deepest point");
    const Pass& first = v.quilt.passes.front();
    const Point table = first.table.middle(), top = v.top.middle();
    if (!same(how.offCentre.dx, table.x - top.x) || !same(how.offCentre.dy, table.y - top.y))
        differs("off_centre", "the middle off the table's by",
                place({how.offCentre.dx, how.offCentre.dy}, unit),
                place({table.x - top.x, table.y - top.y}, unit));
}

} // namespace bastewright::check
