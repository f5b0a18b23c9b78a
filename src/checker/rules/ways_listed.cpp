#include "checker/rules/lifting.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace bastewright::check {
namespace {

constexpr std::size_t kTablesPushed = 6; ///< most that are pushed together (common practice)

/// True where some of the tables of one group make up that area and both sides are sums of sides.
bool canBeMade(const std::vector<Table>& tables, Length length, Length width) {
    std::set<std::string> groups;
    for (const Table& t : tables)
        groups.insert(t.group);
    return std::ranges::any_of(groups, [&](const std::string& group) {
        // Along one side of the rectangle stand some of the tables, with either of their sides.
        std::set<Length> sides{Length{}};
        std::set<double> areas{0};
        for (const Table& t : tables) {
            if (t.group != group)
                continue;
            for (int i = 0; i < std::min(t.count, int(kTablesPushed)); ++i) {
                std::set<Length> longer = sides;
                std::set<double> larger = areas;
                for (const Length s : sides)
                    for (const Length side : {t.length, t.width})
                        if (s + side <= length + kHalving)
                            longer.insert(s + side);
                for (const double a : areas)
                    larger.insert(a + t.length.in() * t.width.in());
                sides = std::move(longer);
                areas = std::move(larger);
            }
        }
        return sides.contains(length) && sides.contains(width) &&
               std::ranges::any_of(
                   areas, [&](double a) { return std::abs(a - length.in() * width.in()) < 1e-6; });
    });
}

/// What is wrong with the figures of one way, chosen or not; nothing where they go together.
std::string faultOf(const QuiltView& v, const Alternative& a) {
    const int lays = a.passes + a.pulls;
    if (a.passes < 0 || a.pulls < 0 || (a.workable && a.passes < 1))
        return std::to_string(a.passes) + " passes and " + std::to_string(a.pulls) + " pulls";
    if (a.pulls > 3 * a.passes)
        return "more pulls than its passes can have";
    const Lifted moved = lays > 1 ? liftOf(v) : Lifted{};
    if (a.liftPeople != moved.people ||
        !(std::abs(a.liftKilograms - moved.kilograms) <= 1e-6 * (1 + moved.kilograms)))
        return std::to_string(a.liftPeople) + " people for " + figure(a.liftKilograms) +
               " kg; the quilt weighs " + figure(moved.kilograms);
    if (a.lifts != (moved.people > 1 ? lays - 1 : 0))
        return std::to_string(a.lifts) + " lifts in " + std::to_string(lays) + " places";
    if ((lays > 1) != (a.largestShift > Length{}) || a.shifted < a.largestShift - kFine ||
        a.shifted > a.largestShift * std::max(lays - 1, 0) + kFine)
        return "shifts of " + figure(a.shifted, v.plan.unit) + " together, the largest of " +
               figure(a.largestShift, v.plan.unit);
    const Size backing = v.quilt.layers.backing;
    const auto [narrow, wide] = std::minmax(backing.width, backing.length);
    const bool floor = a.surfaceLength == wide && a.surfaceWidth == narrow;
    if (a.surfaceLength < a.surfaceWidth ||
        (!floor && !canBeMade(v.session.setting.room.tables, a.surfaceLength, a.surfaceWidth)))
        return "a surface of " + figure(a.surfaceLength, v.plan.unit) + " by " +
               figure(a.surfaceWidth, v.plan.unit) + ", which no tables of the room make";
    const Length across = a.quiltLengthAlongLength ? a.surfaceWidth : a.surfaceLength;
    const Length along = a.quiltLengthAlongLength ? a.surfaceLength : a.surfaceWidth;
    if (abs(a.offCentre.dx) > (v.top.width() + across) / 2 ||
        abs(a.offCentre.dy) > (v.top.length() + along) / 2)
        return "a first place beside the quilt";
    // From the middle: off it only along a side that lies on the table whole, but for a last row.
    const Length row = v.job.basting.spacing;
    if (a.start == Basting::Start::centred &&
        (abs(a.offCentre.dx) > std::max(across - v.top.width(), row) ||
         abs(a.offCentre.dy) > std::max(along - v.top.length(), row)))
        return "a start from the middle that is off it by " +
               place({a.offCentre.dx, a.offCentre.dy}, v.plan.unit);
    if (a.start == Basting::Start::best)
        return "no start";
    // Across the table, or where there are walls perhaps along it.
    const Length farthest = v.session.setting.room.walls.empty() ? a.surfaceWidth : a.surfaceLength;
    if (a.reach < Length{} || a.reach > farthest + kFine)
        return "a reach of " + figure(a.reach, v.plan.unit);
    if (a.predicted < Seconds{} || (a.workable && a.predicted < Seconds{60}))
        return "a time of " + clock(a.predicted);
    return {};
}

/// But for what is said of them, which tells apart two that do not work for different reasons.
bool sameFigures(Alternative a, const Alternative& b) {
    a.chosen = b.chosen;
    if (a.workable)
        a.why = b.why;
    return a == b;
}

} // namespace

// The figures of every way go together, those that were not taken too; those
// that work are listed before the others, in groups by their time.
void passesListed(const QuiltView& v, Report& report) {
    const auto& all = v.quilt.alternatives;
    int steps = 0; // behind the chosen one, those laid out for it, the rest, those that do not work
    for (std::size_t i = 0; i < all.size(); ++i) {
        const std::string what = v.label() + ": way no. " + std::to_string(i + 1);
        const Pointer there = where(v) / "alternatives" / i;
        if (const std::string fault = faultOf(v, all[i]); !fault.empty())
            report.add(there, what + " has " + fault + ".");
        if (i > 0 && all[i].chosen)
            report.add(there / "chosen", what + " is the chosen one and not the first.");
        if (i > 1 && all[i].predicted < all[i - 1].predicted && ++steps > 3)
            report.add(there / "predicted", what + " takes " + clock(all[i].predicted) +
                                                ", and the one before it " +
                                                clock(all[i - 1].predicted) + ".");
        if (i > 0 && all[i].workable && !all[i - 1].workable)
            report.add(there / "workable", what + " works and comes after one that does not.");
        for (std::size_t k = 0; k < i; ++k)
            if (sameFigures(all[k], all[i]))
                report.add(there, what + " is no. " + std::to_string(k + 1) + " once more.");
    }
    if (v.session.jobs.size() == 1 && !all.empty() && all.front().chosen && !v.stopped() &&
        all.front().predicted != v.plan.finish)
        report.add(where(v) / "alternatives/0/predicted",
                   v.label() + ": the chosen way is said to take " + clock(all.front().predicted) +
                       "; the plan finishes at " + clock(v.plan.finish) + ".");
}

} // namespace bastewright::check
