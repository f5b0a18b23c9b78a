#include "checker/geometry/standing_reach.h"
#include "checker/layer_rect.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace bastewright::check {
namespace {

constexpr Length kHangsFreely = Length::inches(12);

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

// What hangs is judged between top and backing: more than 12 in of top must be rolled or folded; a
// roll of what hangs less even with the backing is one too many.
void rollsNeeded(const QuiltView& v, Report& report) {
    const Rect backing = layerRect(v.top, v.quilt.layers.backing);
    for (const Pass& p : v.quilt.passes)
        for (const Side side : kSides) {
            const auto rolls = std::ranges::count(p.rolls, side, &Roll::side);
            const Length top = overhang(v.top, p.table, side);
            const Length hangs = std::max(top, overhang(backing, p.table, side));
            if (top > kHangsFreely && rolls == 0)
                report.add(label(v, p, side) + ": " + figure(top, v.plan.unit) +
                           " of quilt hang from the table and are not rolled.");
            if (rolls > 1)
                report.add(label(v, p, side) + ": rolled twice.");
            for (const Roll& roll : p.rolls) {
                if (roll.side != side)
                    continue;
                if (hangs <= kHangsFreely || roll.rolled <= Length{} || roll.rolled > hangs + kFine)
                    report.add(label(v, p, side) + ": " + figure(roll.rolled, v.plan.unit) +
                               " are rolled; " + figure(std::max(hangs, Length{}), v.plan.unit) +
                               " hang from the table.");
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
