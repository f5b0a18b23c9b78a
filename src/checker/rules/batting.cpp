#include "checker/geometry/partition.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace bastewright::check {
namespace {

/// Batting joined from pieces; nothing where a pack is used or nothing is planned.
const BattingPlan* joined(const QuiltView& v) {
    return v.quilt.batting && v.quilt.batting->pack.empty() && !v.quilt.batting->pieces.empty()
               ? &*v.quilt.batting
               : nullptr;
}

/// The one edge two areas share in full, if they do.
std::optional<Segment> fullEdge(const Rect& a, const Rect& b) {
    if (a.y() == b.y() && (a.x1 == b.x0 || b.x1 == a.x0)) {
        const Length x = a.x1 == b.x0 ? a.x1 : b.x1;
        return Segment{{x, a.y0}, {x, a.y1}};
    }
    if (a.x() == b.x() && (a.y1 == b.y0 || b.y1 == a.y0)) {
        const Length y = a.y1 == b.y0 ? a.y1 : b.y1;
        return Segment{{a.x0, y}, {a.x1, y}};
    }
    return {};
}

Rect joinedArea(const Rect& a, const Rect& b) {
    return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

std::string join(const Segment& s, Unit unit) {
    return place(s.from, unit) + " to " + place(s.to, unit);
}

Length lengthOf(const Segment& s) {
    return abs(s.to.x - s.from.x) + abs(s.to.y - s.from.y);
}

/// A measure of a piece before it is joined: half an overlap more at each end that is joined.
Length uncut(Interval area, Interval batting, Length overlap) {
    return area.size() +
           overlap / 2 * ((area.lo > batting.lo ? 1 : 0) + (area.hi < batting.hi ? 1 : 0));
}

/// Edges between panels of the backing, in the frame of the batting, which lies centred on it.
std::vector<Segment> backingSeams(const QuiltView& v) {
    std::vector<Segment> out;
    if (!v.quilt.backing)
        return out;
    const Size under = v.quilt.layers.backing, over = v.quilt.layers.batting;
    const Vec by{(over.width - under.width) / 2, (over.length - under.length) / 2};
    for (const BackingPanel& p : v.quilt.backing->panels) {
        const Rect at = p.area.moved(by);
        if (p.area.x1 < under.width)
            out.push_back({{at.x1, at.y0}, {at.x1, at.y1}});
        if (p.area.y1 < under.length)
            out.push_back({{at.x0, at.y1}, {at.x1, at.y1}});
    }
    return out;
}

/// True where two upright or level lines run side by side, nearer than `apart`.
bool runAlong(const Segment& a, const Segment& b, Length apart) {
    const auto upright = [](const Segment& s) { return s.from.x == s.to.x; };
    if (upright(a) != upright(b))
        return false;
    const auto along = [&](const Segment& s) {
        const auto [lo, hi] =
            upright(a) ? std::minmax(s.from.y, s.to.y) : std::minmax(s.from.x, s.to.x);
        return Interval{lo, hi};
    };
    const Length between = upright(a) ? abs(a.from.x - b.from.x) : abs(a.from.y - b.from.y);
    return between < apart - kHalving && along(a).overlaps(along(b));
}

struct Pack {
    std::string_view name;
    Length width, length;
};

/// Sizes that batting is sold in (common practice).
constexpr std::array kPacks{Pack{"craft", 36_in, 45_in}, Pack{"crib", 45_in, 60_in},
                            Pack{"throw", 60_in, 60_in}, Pack{"twin", 72_in, 90_in},
                            Pack{"full", 81_in, 96_in},  Pack{"queen", 90_in, 108_in},
                            Pack{"king", 120_in, 120_in}};

bool fits(Size batting, const Pack& pack) {
    return (batting.width <= pack.width && batting.length <= pack.length) ||
           (batting.width <= pack.length && batting.length <= pack.width);
}

} // namespace

void battingPack(const QuiltView& v, Report& report) {
    if (!v.quilt.batting || v.quilt.batting->pack.empty())
        return;
    const std::string& name = v.quilt.batting->pack;
    const auto pack = std::ranges::find(kPacks, name, &Pack::name);
    const Size size = v.quilt.layers.batting;
    if (pack == kPacks.end())
        report.add(v.label() + ": no pack of batting is called '" + name + "'.");
    else if (!fits(size, *pack))
        report.add(v.label() + ": a batting of " + figure(size.width, v.plan.unit) + " by " +
                   figure(size.length, v.plan.unit) + " does not come from a pack called '" + name +
                   "'.");
}

void battingPieces(const QuiltView& v, Report& report) {
    const BattingPlan* plan = joined(v);
    if (plan == nullptr)
        return;
    std::vector<Rect> areas;
    for (const BattingPiecePlaced& p : plan->pieces)
        areas.push_back(p.area);
    const Size size = v.quilt.layers.batting;
    if (const auto fault = partitionFault({{}, {}, size.width, size.length}, areas))
        report.add(v.label() +
                   ": the pieces do not make the batting: " + text(*fault, v.plan.unit));
}

// Every join is one straight cut across what is already joined: it must be the whole edge between
// two rectangles that are pieces or were joined before.
void battingJoins(const QuiltView& v, Report& report) {
    const BattingPlan* plan = joined(v);
    if (plan == nullptr)
        return;
    std::vector<Rect> parts;
    for (const BattingPiecePlaced& p : plan->pieces)
        parts.push_back(p.area);
    Length strip{};
    for (Segment s : plan->joins) {
        if (s.to < s.from)
            std::swap(s.from, s.to);
        strip += lengthOf(s);
        bool made = false;
        for (std::size_t a = 0; a < parts.size() && !made; ++a)
            for (std::size_t b = a + 1; b < parts.size() && !made; ++b)
                if (fullEdge(parts[a], parts[b]) == s) {
                    parts[a] = joinedArea(parts[a], parts[b]);
                    parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(b));
                    made = true;
                }
        if (!made)
            report.add(v.label() + ": the join " + join(s, v.plan.unit) +
                       " is not one straight cut between two parts of the batting that are "
                       "joined so far.");
    }
    if (parts.size() != 1)
        report.add(v.label() + ": after all joins the batting is still in " +
                   std::to_string(parts.size()) + " parts.");
    if (plan->strip < strip - kHalving)
        report.add(v.label() + ": " + figure(plan->strip, v.plan.unit) +
                   " of joining strip is planned for joins of " + figure(strip, v.plan.unit) + ".");
}

// What is cut from a leftover lies inside it, its raw edges trimmed off; it is its place in the
// batting and half of every overlap it takes part in (two layers are cut through the middle of
// their overlap).
void battingFits(const QuiltView& v, Report& report) {
    const BattingPlan* plan = joined(v);
    if (plan == nullptr)
        return;
    const Batting& batting = v.job.batting;
    const Rect all{{}, {}, v.quilt.layers.batting.width, v.quilt.layers.batting.length};
    const Unit unit = v.plan.unit;
    std::map<std::string, std::vector<Rect>> used;
    for (const BattingPiecePlaced& p : plan->pieces) {
        const std::string what = v.label() + ": batting piece '" + p.name + "'";
        const auto leftover = std::ranges::find(batting.pieces, p.name, &BattingPiece::name);
        if (leftover == batting.pieces.end()) {
            report.add(what + " is not among the leftovers.");
            continue;
        }
        used[p.name].push_back(p.onPiece);
        const Rect usable = Rect{{}, {}, leftover->width, leftover->length}.grown(-batting.trim);
        if (!usable.contains(p.onPiece))
            report.add(what + " is cut from " + box(p.onPiece, unit) +
                       "; without its raw edges it is " + box(usable, unit) + ".");
        if (p.turned && !batting.mayTurn)
            report.add(what + " is turned, but pieces may not be.");
        Length width = uncut(p.area.x(), all.x(), batting.overlap);
        Length length = uncut(p.area.y(), all.y(), batting.overlap);
        if (p.turned)
            std::swap(width, length);
        if (p.onPiece.width() < width - kHalving || p.onPiece.length() < length - kHalving)
            report.add(what + " is cut " + figure(p.onPiece.width(), unit) + " by " +
                       figure(p.onPiece.length(), unit) + "; with its overlaps it takes " +
                       figure(width, unit) + " by " + figure(length, unit) + ".");
    }
    for (const auto& [name, cuts] : used) {
        const auto leftover = std::ranges::find(batting.pieces, name, &BattingPiece::name);
        const auto splits = std::ranges::count(plan->splits, name, &BattingSplit::name);
        if (std::ssize(cuts) > leftover->count + splits)
            report.add(v.label() + ": " + std::to_string(cuts.size()) + " pieces are cut from '" +
                       name + "', of which there are " + std::to_string(leftover->count) + ".");
        for (std::size_t a = 0; a < cuts.size() && leftover->count == 1; ++a)
            for (std::size_t b = a + 1; b < cuts.size(); ++b)
                if (cuts[a].overlaps(cuts[b]))
                    report.add(v.label() + ": two pieces cut from '" + name + "' share " +
                               box(intersection(cuts[a], cuts[b]), unit) + ".");
    }
}

// Where four corners meet, or a join runs along a seam of the backing less than 2 in away, the
// layers lump (common practice). Some tops allow nothing else; then the plan says so.
void battingApart(const QuiltView& v, Report& report) {
    const BattingPlan* plan = joined(v);
    if (plan == nullptr || v.tells("/batting", Finding::Level::note))
        return;
    const Unit unit = v.plan.unit;
    std::map<Point, int> corners;
    for (const BattingPiecePlaced& p : plan->pieces)
        for (const Point at : {Point{p.area.x0, p.area.y0}, Point{p.area.x1, p.area.y0},
                               Point{p.area.x0, p.area.y1}, Point{p.area.x1, p.area.y1}})
            ++corners[at];
    for (const auto& [at, number] : corners)
        if (number == 4)
            report.add(v.label() + ": four corners of batting meet at " + place(at, unit) + ".");
    for (const Segment& seam : backingSeams(v))
        for (const Segment& s : plan->joins)
            if (runAlong(s, seam, Length::inches(2)))
                report.add(v.label() + ": the join " + join(s, unit) +
                           " runs less than 2 in beside a seam of the backing.");
}

} // namespace bastewright::check
