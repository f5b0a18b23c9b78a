#include "checker/geometry/standing_reach.h"
#include "checker/layer_rect.h"
#include "checker/rules/roll_diameter.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <array>
#include <map>

namespace bastewright::check {
namespace {

constexpr Length kHangsFree = Length::inches(28), kWorthRolling = Length::inches(12);

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

void checkDiameter(const QuiltView& v, const Roll& roll, const Pointer& there,
                   const std::string& what, Report& report) {
    const Length expected = diameterOf(v, roll.rolled);
    if (abs(roll.diameter - expected) > Length::inch64ths(1))
        report.add(there / "diameter", what + ": " + figure(roll.rolled, v.plan.unit) +
                                           " rolled makes " + figure(expected, v.plan.unit) +
                                           " across, not " + figure(roll.diameter, v.plan.unit) +
                                           ".");
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
                report.add(where(v, p) / "beyond" / name(side),
                           label(v, p, side) + ": " + figure(top, v.plan.unit) +
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
                report.add(where(v, p) / "rolls",
                           label(v, p, side) + ": " + std::to_string(rolls) + " rolls where " +
                               (rolled ? "one is" : "none is") + " expected.");
            for (const Roll& roll : p.rolls) {
                if (roll.side != side)
                    continue;
                if (roll.rolled <= Length{} || abs(roll.rolled - hangs) > kFine)
                    report.add(where(v, p).in("rolls", p.rolls, roll) / "rolled",
                               label(v, p, side) + ": " + figure(roll.rolled, v.plan.unit) +
                                   " are rolled; " +
                                   figure(std::max(hangs, Length{}), v.plan.unit) +
                                   " are beyond the table.");
                if (abs(roll.along - extent(backing, side).size()) > kFine)
                    report.add(where(v, p).in("rolls", p.rolls, roll) / "along",
                               label(v, p, side) + ": the roll is " +
                                   figure(roll.along, v.plan.unit) + " long; the backing has " +
                                   figure(extent(backing, side).size(), v.plan.unit) + ".");
            }
        }
}

void rollsDiameter(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Roll& roll : p.rolls)
            checkDiameter(v, roll, where(v, p).in("rolls", p.rolls, roll), label(v, p, roll.side),
                          report);
    for (const Roll& roll : v.quilt.machineRolls)
        checkDiameter(v, roll, where(v).in("machine_rolls", v.quilt.machineRolls, roll),
                      v.label() + ", for the machine, " + std::string{name(roll.side)}, report);
}

namespace {

/// One every 15 in and at least two (common practice: one every 12 to 18 in).
std::int64_t clipsOn(Length along) {
    return std::max(std::int64_t{2}, ceilDiv(along, Length::inches(15)));
}

bool anyHolds(const QuiltView& v, Length diameter) {
    return std::ranges::any_of(v.session.setting.stash.clips, [&](const ClipStock& c) {
        return c.holds >= diameter && c.count > 0;
    });
}

/// What is wrong with how a roll is held. Without a clip on hand that is large enough, one to bring
/// serves where `toBring` says so, else the part is folded on a support.
void checkClips(const QuiltView& v, const Roll& roll, bool toBring, const Pointer& there,
                const std::string& what, Report& report) {
    const Unit unit = v.plan.unit;
    const bool held = roll.clipHolds > Length{};
    if (held && roll.clipHolds < roll.diameter)
        report.add(there / "clip_holds", what + ": a clip for " + figure(roll.clipHolds, unit) +
                                             " does not hold a roll of " +
                                             figure(roll.diameter, unit) + ".");
    if (roll.clipHolds != Length{} && !onHand(v, roll.clipHolds))
        report.add(there / "clip_holds",
                   what + ": no clip for " + figure(roll.clipHolds, unit) + " is on hand.");
    const bool brought = toBring && !held && roll.diameter <= kLargestClip;
    if (!held && !brought && !roll.folded)
        report.add(there, what + ": the roll is held by no clip and is not folded.");
    if (anyHolds(v, roll.diameter) && (!held || roll.folded))
        report.add(there, what + ": a clip on hand holds the roll, and is not used.");
    if (roll.folded && (held || brought))
        report.add(there / "folded", what + ": a folded part is held by clips.");
    const std::int64_t asked = roll.folded ? 0 : clipsOn(roll.along);
    if (roll.clips != asked)
        report.add(there / "clips", what + ": " + std::to_string(roll.clips) + " clips on " +
                                        figure(roll.along, unit) +
                                        "; one every 15 in, two at least, none where it is "
                                        "folded, are " +
                                        std::to_string(asked) + ".");
}

} // namespace

void rollsClips(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Roll& roll : p.rolls)
            checkClips(v, roll, false, where(v, p).in("rolls", p.rolls, roll),
                       label(v, p, roll.side), report);
    for (const Roll& roll : v.quilt.machineRolls)
        checkClips(v, roll, true, where(v).in("machine_rolls", v.quilt.machineRolls, roll),
                   v.label() + ", for the machine, " + std::string{name(roll.side)}, report);
}

// For the machine the quilt is rolled from both of its longer sides to the middle.
void rollsMachine(const QuiltView& v, Report& report) {
    if (v.stopped() && v.quilt.machineRolls.empty())
        return;
    const Size backing = v.quilt.layers.backing;
    const bool tall = backing.length >= backing.width;
    const Length along = std::max(backing.width, backing.length);
    const Length half = std::min(backing.width, backing.length) / 2;
    const std::array sides{tall ? Side::left : Side::head, tall ? Side::right : Side::foot};
    const auto& rolls = v.quilt.machineRolls;
    const bool two = rolls.size() == 2 && rolls[0].side == sides[0] && rolls[1].side == sides[1];
    if (!two)
        report.add(where(v) / "machine_rolls",
                   v.label() + ": for the machine it is rolled from the " +
                       std::string{name(sides[0])} + " and from the " +
                       std::string{name(sides[1])} + "; the plan has " +
                       std::to_string(rolls.size()) + " rolls, or others.");
    for (const Roll& roll : rolls)
        if (abs(roll.rolled - half) > kFine || abs(roll.along - along) > kFine)
            report.add(where(v).in("machine_rolls", v.quilt.machineRolls, roll),
                       v.label() + ", for the machine, " + std::string{name(roll.side)} + ": " +
                           figure(roll.rolled, v.plan.unit) + " of quilt in a roll of " +
                           figure(roll.along, v.plan.unit) + "; half the backing is " +
                           figure(half, v.plan.unit) + ", along " + figure(along, v.plan.unit) +
                           ".");
}

} // namespace bastewright::check
