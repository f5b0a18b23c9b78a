#include "checker/geometry/standing_reach.h"
#include "checker/layer_rect.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <vector>

namespace bastewright::check {
namespace {

Rect backing(const QuiltView& v) {
    return layerRect(v.top, v.quilt.layers.backing);
}

/// The part of a side of the table along which the backing is held: beside the new area, 6 in of
/// what is basted (the anchor), and to the end of the backing where the top ends.
Interval held(const QuiltView& v, const Pass& p, Side side) {
    const Interval fresh = extent(p.fresh.bounds(), side), top = extent(v.top, side);
    const Interval cloth = extent(backing(v), side);
    const Interval needed{fresh.lo <= top.lo ? cloth.lo : fresh.lo - Length::inches(6),
                          fresh.hi >= top.hi ? cloth.hi : fresh.hi + Length::inches(6)};
    return intersection(extent(p.table, side), needed);
}

bool isLong(const Pass& p, Side side) {
    const Interval own = extent(p.table, side);
    return own.size() == std::max(p.table.width(), p.table.length());
}

} // namespace

void holdsSides(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Side side : kSides) {
            std::vector<const Hold*> here;
            for (const Hold& h : p.holds)
                if (h.side == side)
                    here.push_back(&h);
            // What is pulled across is held by what is basted round it, what lies rolled against a
            // wall by its weight.
            if (p.pulled || p.beyond[side] == Beyond::onTable) {
                if (!here.empty())
                    report.add(where(v, p).in("holds", p.holds, *here.front()),
                               label(v, p, side) + " has holds where nothing can be held.");
                continue;
            }
            if (here.size() != 1) {
                report.add(where(v, p) / "holds", label(v, p, side) + ": " +
                                                      std::to_string(here.size()) +
                                                      " holds; each side has one.");
                continue;
            }
            const Length hangs = overhang(backing(v), p.table, side);
            const bool clamp = here.front()->kind == Hold::Kind::clamp;
            if (clamp != (hangs > Length{}))
                report.add(where(v, p).in("holds", p.holds, *here.front()) / "kind",
                           label(v, p, side) + ": the backing " +
                               (hangs > Length{} ? "hangs " + figure(hangs, v.plan.unit) + " over"
                                                 : "ends on the table") +
                               ", but is held with " + (clamp ? "clamps." : "tape."));
        }
}

// Clamps: one per 12 to 18 in of the side along which backing hangs, at least two on more than 12
// in. Tape: a piece of 6 in every 12 in. Both common practice.
void holdsCount(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Hold& h : p.holds) {
            const Pointer there = where(v, p).in("holds", p.holds, h);
            const Interval along = held(v, p, h.side);
            const std::int64_t foot = ceilDiv(std::max(along.size(), Length{}), Length::inches(12));
            const bool clamp = h.kind == Hold::Kind::clamp;
            const std::int64_t least =
                clamp ? std::max(ceilDiv(std::max(along.size(), Length{}), Length::inches(18)),
                                 std::int64_t{along.size() > Length::inches(12) ? 2 : 1})
                      : std::max(foot - 1, std::int64_t{1});
            const std::int64_t most = std::max(foot + 1, least);
            if (h.count < least || h.count > most)
                report.add(there / "count", label(v, p, h.side) + ": " + std::to_string(h.count) +
                                                (clamp ? " clamps" : " pieces of tape") + " on " +
                                                figure(along.size(), v.plan.unit) + " of side; " +
                                                std::to_string(least) + " to " +
                                                std::to_string(most) + " are accepted.");
            // Whole inches or centimetres, as it is said.
            const Length one =
                v.job.unit == Unit::inch ? Length::inches(1) : Length::millimetres(10);
            const Length apart = h.count > 1 ? along.size() / h.count : Length{};
            if (abs(h.apart - apart) > one / 2 + kHalving || h.apart.nm() % one.nm() != 0)
                report.add(there / "apart", label(v, p, h.side) +
                                                ": the holds are said to be about " +
                                                figure(h.apart, v.plan.unit) + " apart; they are " +
                                                figure(apart, v.plan.unit) + ".");
            const Length tape = clamp ? Length{} : Length::inches(6) * h.count;
            if (h.length != tape)
                report.add(there / "length", label(v, p, h.side) + ": " +
                                                 figure(h.length, v.plan.unit) + " of tape; " +
                                                 figure(tape, v.plan.unit) + " is expected.");
        }
}

void holdsOrder(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes) {
        bool shortSeen = false;
        const Hold* last = nullptr;
        for (const Hold& h : p.holds) {
            const Pointer there = where(v, p).in("holds", p.holds, h);
            if (isLong(p, h.side) && shortSeen)
                report.add(there / "side",
                           label(v, p, h.side) + ": a long side comes after a short one.");
            shortSeen = shortSeen || !isLong(p, h.side);
            if (last != nullptr && isAcross(last->side) == isAcross(h.side) && last->side > h.side)
                report.add(there / "side", label(v, p, h.side) + " comes after the " +
                                               std::string{name(last->side)} + ".");
            last = &h;
            if (std::ssize(h.positions) != h.count)
                report.add(there / "positions",
                           label(v, p, h.side) + ": " + std::to_string(h.positions.size()) +
                               " places for " + std::to_string(h.count) + " holds.");
            const Interval along = held(v, p, h.side);
            for (const Length& at : h.positions)
                if (!along.contains(at))
                    report.add(there.in("positions", h.positions, at),
                               label(v, p, h.side) + ": a hold at " + figure(at, v.plan.unit) +
                                   " is not on the side where backing lies.");
            // From the middle outward; of two equally far the one nearer to the head or the left.
            std::vector<Length> outward = h.positions;
            std::ranges::sort(outward, {}, [&](Length at) {
                return std::pair{abs(at - along.middle()), at};
            });
            if (outward != h.positions)
                report.add(there / "positions",
                           label(v, p, h.side) + ": the holds do not go from the middle outward.");
            std::vector<Length> sorted = h.positions;
            std::ranges::sort(sorted);
            // Each in the middle of its share of the side.
            const auto all = static_cast<std::int64_t>(sorted.size());
            for (std::int64_t i = 0; i < all; ++i)
                if (const Length middle = along.lo + along.size() * (2 * i + 1) / (2 * all);
                    abs(sorted[std::size_t(i)] - middle) > kFine)
                    report.add(there / "positions",
                               label(v, p, h.side) + ": a hold is at " +
                                   figure(sorted[std::size_t(i)], v.plan.unit) +
                                   "; evenly shared the side has one at " +
                                   figure(middle, v.plan.unit) + ".");
            for (std::size_t i = 1; i < sorted.size(); ++i)
                if (sorted[i] - sorted[i - 1] > Length::inches(18) + kHalving)
                    report.add(there / "positions",
                               label(v, p, h.side) + ": holds are " +
                                   figure(sorted[i] - sorted[i - 1], v.plan.unit) +
                                   " apart; 18 in is the most.");
        }
    }
}

// Rounds: the first of the long sides, the first of the short sides, the second of the long sides
// …, so that long sides have the odd numbers and short sides the even; holds that face each other
// have one number, the same in every pass.
void holdsNumbers(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Hold& h : p.holds) {
            if (h.numbers.size() != h.positions.size())
                report.add(where(v, p).in("holds", p.holds, h) / "numbers",
                           label(v, p, h.side) + ": " + std::to_string(h.numbers.size()) +
                               " numbers for " + std::to_string(h.positions.size()) + " places.");
            const bool across = p.table.width() >= p.table.length(); // the long sides
            int expected = isAcross(h.side) == across ? 1 : 2;
            for (const int& number : h.numbers) {
                if (number != expected) {
                    report.add(where(v, p).in("holds", p.holds, h).in("numbers", h.numbers, number),
                               label(v, p, h.side) + ": a hold has number " +
                                   std::to_string(number) + " where " + std::to_string(expected) +
                                   " is expected.");
                    break;
                }
                expected += 2;
            }
        }
}

} // namespace bastewright::check
