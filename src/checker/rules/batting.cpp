#include "checker/geometry/partition.h"
#include "checker/rules/packs.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace bastewright::check {
namespace {

/// Batting of pieces, be it one; nothing where nothing is planned.
const BattingPlan* joined(const QuiltView& v) {
    return v.quilt.batting && !v.quilt.batting->pieces.empty() ? &*v.quilt.batting : nullptr;
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

/// A leftover cut square: of a parallelogram whose diagonals differ, its lean is lost of its width
/// or of its length, whichever leaves more. From the law of cosines.
Rect cutSquare(const BattingPiece& piece) {
    Rect out{{}, {}, piece.width, piece.length};
    if (piece.diagonals.size() != 2)
        return out;
    const double w = piece.width.in(), l = piece.length.in();
    const double d = piece.diagonals[0].in(), e = piece.diagonals[1].in();
    const double shared = std::abs(d - e) * (d + e) / 4;
    const double narrower = w - shared / w, shorter = l - shared / l;
    if (narrower * l >= shorter * w)
        out.x1 = Length::nearestInches(narrower);
    else
        out.y1 = Length::nearestInches(shorter);
    return out;
}

/// What a piece may be cut from, and what its place there is called.
struct Source {
    Rect usable;
    bool mayTurn = true;
};

/// Of new batting: a pack is trimmed where it is joined; a roll's usable width is, and its ends are
/// cut.
std::optional<Source> boughtSource(const QuiltView& v, const BattingPlan& plan, int which) {
    if (which < 0 || std::size_t(which) >= plan.buy.size())
        return {};
    const BattingPurchase& b = plan.buy[std::size_t(which)];
    const Rect all{{},
                   {},
                   washed(b.width, v.job.batting.shrinkPercent),
                   washed(b.length, v.job.batting.shrinkPercent)};
    const bool trimmed = !b.pack.empty() && !plan.joins.empty();
    return Source{trimmed ? all.grown(-v.job.batting.trim) : all};
}

} // namespace

void battingBought(const QuiltView& v, Report& report) {
    if (!v.quilt.batting)
        return;
    const Unit unit = v.plan.unit;
    for (const BattingPurchase& b : v.quilt.batting->buy) {
        const std::string size = figure(b.width, unit) + " by " + figure(b.length, unit);
        if (!b.pack.empty()) {
            if (packSize(b.pack, v.job.unit) != Size{b.width, b.length})
                report.add(where(v).in("batting/buy", v.quilt.batting->buy, b),
                           v.label() + ": no pack called '" + b.pack + "' is " + size + ".");
            continue;
        }
        if (!isRollSold(v, b.width))
            report.add(where(v).in("batting/buy", v.quilt.batting->buy, b) / "width",
                       v.label() + ": no roll is " + figure(b.width, unit) + " wide.");
        const Length step = soldBy(v);
        if (b.length <= Length{} || b.length.nm() % step.nm() != 0)
            report.add(where(v).in("batting/buy", v.quilt.batting->buy, b) / "length",
                       v.label() + ": " + figure(b.length, unit) +
                           " of batting are to be bought; it is sold by " + figure(step, unit) +
                           ".");
    }
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
        report.add(where(*fault, where(v) / "batting/pieces", areas),
                   v.label() +
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
    for (const Segment& sewn : plan->joins) {
        Segment s = sewn;
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
            report.add(where(v).in("batting/joins", plan->joins, sewn),
                       v.label() + ": the join " + join(s, v.plan.unit) +
                           " is not one straight cut between two parts of the batting that are "
                           "joined so far.");
    }
    if (parts.size() != 1)
        report.add(where(v) / "batting/joins", v.label() +
                                                   ": after all joins the batting is still in " +
                                                   std::to_string(parts.size()) + " parts.");
    if (abs(plan->strip - strip) > kHalving)
        report.add(where(v) / "batting/strip", v.label() + ": " + figure(plan->strip, v.plan.unit) +
                                                   " of joining strip is planned for joins of " +
                                                   figure(strip, v.plan.unit) + ".");
}

// What a piece is cut from lies inside it, cut square, its raw edges trimmed off; it is its place
// in the batting and half of every overlap it takes part in (two layers are cut through the middle
// of their overlap). No two pieces share batting, be it left over or new.
void battingFits(const QuiltView& v, Report& report) {
    const BattingPlan* plan = joined(v);
    if (plan == nullptr)
        return;
    const Batting& batting = v.job.batting;
    const Rect all{{}, {}, v.quilt.layers.batting.width, v.quilt.layers.batting.length};
    const Unit unit = v.plan.unit;
    std::map<std::pair<int, std::string>, std::vector<Rect>> used;
    for (const BattingPiecePlaced& p : plan->pieces) {
        const std::string what = v.label() + ": batting piece '" + p.name + "'";
        const Pointer there = where(v).in("batting/pieces", plan->pieces, p);
        std::optional<Source> source = boughtSource(v, *plan, p.bought);
        if (p.bought < 0) {
            const auto leftover = std::ranges::find(batting.pieces, p.name, &BattingPiece::name);
            if (leftover != batting.pieces.end())
                source = Source{cutSquare(*leftover).grown(-batting.trim), batting.mayTurn};
        }
        if (!source) {
            report.add(there / (p.bought < 0 ? "name" : "bought"),
                       what + (p.bought < 0 ? " is not among the leftovers." : " is not bought."));
            continue;
        }
        used[{p.bought, p.bought < 0 ? p.name : std::string{}}].push_back(p.onPiece);
        if (!source->usable.grown(kHalving).contains(p.onPiece))
            report.add(there / "on_piece", what + " is cut from " + box(p.onPiece, unit) +
                                               "; without its raw edges it is " +
                                               box(source->usable, unit) + ".");
        if (p.turned && !source->mayTurn)
            report.add(there / "turned", what + " is turned, but pieces may not be.");
        Length width = uncut(p.area.x(), all.x(), batting.overlap);
        Length length = uncut(p.area.y(), all.y(), batting.overlap);
        if (p.turned)
            std::swap(width, length);
        if (abs(p.onPiece.width() - width) > kHalving ||
            abs(p.onPiece.length() - length) > kHalving)
            report.add(there / "on_piece",
                       what + " is cut " + figure(p.onPiece.width(), unit) + " by " +
                           figure(p.onPiece.length(), unit) + "; with its overlaps it takes " +
                           figure(width, unit) + " by " + figure(length, unit) + ".");
    }
    for (const auto& [source, cuts] : used) {
        const auto& [bought, name] = source;
        std::ptrdiff_t there = 1;
        if (bought < 0) {
            there = std::ranges::find(batting.pieces, name, &BattingPiece::name)->count;
            const auto splits = std::ranges::count(plan->splits, name, &BattingSplit::name);
            if (std::ssize(cuts) > there + splits)
                report.add(where(v) / "batting/pieces",
                           v.label() + ": " + std::to_string(cuts.size()) +
                               " pieces are cut from '" + name + "', of which there are " +
                               std::to_string(there) + ".");
        }
        for (std::size_t a = 0; a < cuts.size() && there == 1; ++a)
            for (std::size_t b = a + 1; b < cuts.size(); ++b)
                if (cuts[a].overlaps(cuts[b]))
                    report.add(where(v) / "batting/pieces",
                               v.label() + ": two pieces cut from " +
                                   (bought < 0 ? "'" + name + "'" : "new batting") + " share " +
                                   box(intersection(cuts[a], cuts[b]), unit) + ".");
    }
}

// Where four corners meet, or a join runs along a seam of the backing less than 2 in away, the
// layers lump (common practice). Some tops allow nothing else; then the plan says so.
void battingApart(const QuiltView& v, Report& report) {
    const BattingPlan* plan = joined(v);
    if (plan == nullptr)
        return;
    const Unit unit = v.plan.unit;
    std::map<Point, int> corners;
    for (const BattingPiecePlaced& p : plan->pieces)
        for (const Point at : {Point{p.area.x0, p.area.y0}, Point{p.area.x1, p.area.y0},
                               Point{p.area.x0, p.area.y1}, Point{p.area.x1, p.area.y1}})
            ++corners[at];
    for (const auto& [at, number] : corners)
        if (number == 4 && v.tells(Finding::Kind::cornersMeet) == nullptr)
            report.add(where(v) / "batting/pieces",
                       v.label() + ": four corners of batting meet at " + place(at, unit) + ".");
    for (const Segment& seam : backingSeams(v))
        for (const Segment& s : plan->joins)
            if (runAlong(s, seam, Length::inches(2)) &&
                v.tells(Finding::Kind::joinsOnSeams) == nullptr)
                report.add(where(v).in("batting/joins", plan->joins, s),
                           v.label() + ": the join " + join(s, unit) +
                               " runs less than 2 in beside a seam of the backing.");
}

} // namespace bastewright::check
