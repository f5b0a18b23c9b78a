#include "checker/geometry/standing_reach.h"
#include "checker/layer_rect.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace bastewright::check {
namespace {

constexpr Length kHangsFree = Length::inches(28), kWorthRolling = Length::inches(12);

std::string label(const QuiltView& v, const Pass& p, Side side) {
    return v.label() + ", pass " + std::to_string(p.number) + ", " + std::string{name(side)};
}

/// Area rule of a wound roll without a core: its cross-section is the strip's, packed at 0.8 by
/// hand (from memory). Each turn is batting between two layers of quilting cotton of 0.3 mm (from
/// memory).
Length diameterOf(const QuiltView& v, Length wound) {
    constexpr double packing = 0.8;
    const double thick = v.job.batting.thickness.mm() + 2 * 0.3;
    return Length::nearestMillimetres(
        std::sqrt(4 * std::max(wound.mm(), 0.0) * thick / (std::numbers::pi * packing)));
}

/// True where a group of the room's tables makes the surface and has a table left over.
bool hasTableLeft(const QuiltView& v) {
    std::map<std::string, std::map<std::pair<Length, Length>, int>> groups;
    for (const Table& t : v.session.setting.room.tables)
        groups[t.group][std::minmax(t.length, t.width)] += t.count;
    for (const auto& [name, tables] : groups) {
        auto left = tables;
        for (const Rect& t : v.quilt.surface.tables)
            --left[std::minmax(t.width(), t.length())];
        const bool makes = std::ranges::all_of(left, [](const auto& l) { return l.second >= 0; });
        const bool more = std::ranges::any_of(left, [](const auto& l) { return l.second > 0; });
        if (makes && more)
            return true;
    }
    return false;
}

/// True where the stash has a clip of this size.
bool onHand(const QuiltView& v, Length holds) {
    return std::ranges::any_of(v.session.setting.stash.clips,
                               [&](const ClipStock& c) { return c.holds == holds && c.count > 0; });
}

void checkDiameter(const QuiltView& v, const Roll& roll, const std::string& what, Report& report) {
    const Length expected = diameterOf(v, roll.rolled);
    if (abs(roll.diameter - expected) > Length::inch64ths(1))
        report.add(what + ": " + figure(roll.rolled, v.plan.unit) + " rolled makes " +
                   figure(expected, v.plan.unit) + " across, not " +
                   figure(roll.diameter, v.plan.unit) + ".");
}

} // namespace

// Tables are about 30 in high (ITTF Laws 2.1: 76 cm): more than 28 in of quilt would lie on the
// floor.
void rollsBeyond(const QuiltView& v, Report& report) {
    const Room& room = v.session.setting.room;
    const auto how = std::ranges::find_if(v.quilt.alternatives, &Alternative::chosen);
    const bool fromEnd = how != v.quilt.alternatives.end() && how->start == Basting::Start::oneEnd;
    const Rect backing = layerRect(v.top, v.quilt.layers.backing);
    for (const Pass& p : v.quilt.passes)
        for (const Side side : kSides) {
            const Length hangs = overhang(backing, p.table, side);
            const Length top = overhang(v.top, p.table, side);
            const bool wall =
                room.wallGap < kHangingRoom &&
                std::ranges::find(v.quilt.surface.closed, side) != v.quilt.surface.closed.end();
            std::vector<Beyond> right;
            if (hangs <= Length{} || v.quilt.surface.floor)
                right = {Beyond::nothing};
            else if (wall)
                right = {Beyond::onTable};
            else if (fromEnd && top > kWorthRolling)
                right = {Beyond::rolled};
            else if (top > kHangsFree)
                right = {v.session.jobs.size() == 1 && hasTableLeft(v) ? Beyond::spareTable
                                                                       : Beyond::chairs};
            else
                right = {Beyond::hangs};
            if (std::ranges::find(right, p.beyond[side]) == right.end())
                report.add(label(v, p, side) + ": " + figure(top, v.plan.unit) +
                           " of the top are beyond the table; it is not said rightly what "
                           "becomes of it.");
        }
}

void rollsNeeded(const QuiltView& v, Report& report) {
    const Rect backing = layerRect(v.top, v.quilt.layers.backing);
    for (const Pass& p : v.quilt.passes)
        for (const Side side : kSides) {
            const auto rolls = std::ranges::count(p.rolls, side, &Roll::side);
            const Length hangs = overhang(backing, p.table, side);
            const bool rolled =
                p.beyond[side] == Beyond::rolled || p.beyond[side] == Beyond::onTable;
            if (rolls != (rolled ? 1 : 0))
                report.add(label(v, p, side) + ": " + std::to_string(rolls) + " rolls where " +
                           (rolled ? "one is" : "none is") + " expected.");
            for (const Roll& roll : p.rolls) {
                if (roll.side != side)
                    continue;
                if (roll.rolled <= Length{} || roll.rolled > hangs + kFine)
                    report.add(label(v, p, side) + ": " + figure(roll.rolled, v.plan.unit) +
                               " are rolled; " + figure(std::max(hangs, Length{}), v.plan.unit) +
                               " are beyond the table.");
                if (roll.along <= Length{} || roll.along > extent(backing, side).size() + kFine)
                    report.add(label(v, p, side) + ": the roll is " +
                               figure(roll.along, v.plan.unit) + " long; the backing has " +
                               figure(extent(backing, side).size(), v.plan.unit) + ".");
            }
        }
}

void rollsDiameter(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Roll& roll : p.rolls)
            checkDiameter(v, roll, label(v, p, roll.side), report);
    for (const Roll& roll : v.quilt.machineRolls)
        checkDiameter(v, roll, v.label() + ", for the machine, " + std::string{name(roll.side)},
                      report);
}

void rollsClips(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Roll& roll : p.rolls) {
            const std::string what = label(v, p, roll.side);
            const bool held = roll.clipHolds > Length{};
            if (held && roll.clipHolds < roll.diameter)
                report.add(what + ": a clip for " + figure(roll.clipHolds, v.plan.unit) +
                           " does not hold a roll of " + figure(roll.diameter, v.plan.unit) + ".");
            if (held && !onHand(v, roll.clipHolds))
                report.add(what + ": no clip for " + figure(roll.clipHolds, v.plan.unit) +
                           " is on hand.");
            if (!held && !roll.folded)
                report.add(what + ": the roll is held by no clip and is not folded.");
            const std::int64_t least =
                std::max(std::int64_t{2}, ceilDiv(roll.along, Length::inches(18)));
            if (held && !roll.folded && roll.clips < least)
                report.add(what + ": " + std::to_string(roll.clips) + " clips on " +
                           figure(roll.along, v.plan.unit) + "; one every 18 in, " +
                           std::to_string(least) + ", is the least.");
        }
}

} // namespace bastewright::check
