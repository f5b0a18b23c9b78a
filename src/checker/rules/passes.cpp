#include "checker/geometry/partition.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/roll_diameter.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <functional>
#include <optional>

namespace bastewright::check {
namespace {

/// The part of a side that two areas share, one beyond the other; nothing where they do not touch
/// along a length. `towards` is the side of `area` at which `other` lies.
std::optional<Interval> sharedEdge(const Rect& area, const Rect& other, Side towards) {
    const bool meet = towards == Side::head   ? other.y1 == area.y0
                      : towards == Side::foot ? other.y0 == area.y1
                      : towards == Side::left ? other.x1 == area.x0
                                              : other.x0 == area.x1;
    const Interval shared =
        isAcross(towards) ? intersection(area.x(), other.x()) : intersection(area.y(), other.y());
    if (!meet || shared.size() <= Length{})
        return {};
    return shared;
}

/// The same for areas of several parts: true where any two of their parts share an edge.
bool touchesAt(const Region& area, const Region& other, Side towards) {
    return std::ranges::any_of(area.parts, [&](const Rect& a) {
        return std::ranges::any_of(
            other.parts, [&](const Rect& b) { return sharedEdge(a, b, towards).has_value(); });
    });
}

/// So much beyond a side of an area.
Rect strip(const Rect& area, Side side, Interval along, Length deep) {
    switch (side) {
    case Side::head:
        return {along.lo, area.y0 - deep, along.hi, area.y0};
    case Side::foot:
        return {along.lo, area.y1, along.hi, area.y1 + deep};
    case Side::left:
        return {area.x0 - deep, along.lo, area.x0, along.hi};
    case Side::right:
        return {area.x1, along.lo, area.x1 + deep, along.hi};
    }
    return {};
}

/// The strips beyond the edges that the parts of an area share with another's at one side.
std::vector<Rect> anchorsAt(const Region& area, const Region& other, Side side, Length deep) {
    std::vector<Rect> out;
    for (const Rect& a : area.parts)
        for (const Rect& b : other.parts)
            if (const auto shared = sharedEdge(a, b, side))
                out.push_back(strip(a, side, *shared, deep));
    return out;
}

std::vector<const Pass*> before(const QuiltView& v, const Pass& pass) {
    std::vector<const Pass*> out;
    for (const Pass& p : v.quilt.passes)
        if (p.number < pass.number)
            out.push_back(&p);
    return out;
}

bool near(Length a, Length b, Length tolerance) {
    return abs(a - b) <= tolerance;
}

/// The ends of an axis that lie on the table inside its rim; the rim counts only where the top goes
/// on past the table's edge.
Interval fieldAlong(Interval table, Interval top, Length rim) {
    const Length lo = table.lo <= top.lo ? top.lo : table.lo + rim;
    const Length hi = table.hi >= top.hi ? top.hi : table.hi - rim;
    return {lo, hi};
}

/// Sides of the quilt over which nothing can hang: at a wall that the tables stand near.
std::vector<Side> walls(const QuiltView& v) {
    const Room& room = v.session.setting.room;
    return room.wallGap >= kHangingRoom || v.quilt.surface.floor ? std::vector<Side>{}
                                                                 : v.quilt.surface.closed;
}

std::vector<Point> pointsOf(const QuiltView& v, const Pass& pass) {
    std::vector<Point> out;
    for (const Zone& z : v.quilt.zones)
        if (z.pass == pass.number)
            for (const PlacedPoint& p : z.points)
                out.push_back(p.at);
    return out;
}

/// What the first pass bastes, with what is pulled across right after it.
Rect firstArea(const QuiltView& v) {
    Region all;
    for (const Pass& p : v.quilt.passes) {
        if (p.number > 1 && !p.pulled)
            break;
        all.parts.insert(all.parts.end(), p.fresh.parts.begin(), p.fresh.parts.end());
    }
    return all.bounds();
}

const Alternative* chosen(const QuiltView& v) {
    const auto it = std::ranges::find_if(v.quilt.alternatives, &Alternative::chosen);
    return it == v.quilt.alternatives.end() ? nullptr : &*it;
}

} // namespace

void passesNumbers(const QuiltView& v, Report& report) {
    int expected = 1;
    for (const Pass& p : v.quilt.passes) {
        if (p.number != expected)
            report.add(where(v, p) / "number", label(v, p) + " comes where pass " +
                                                   std::to_string(expected) + " is expected.");
        ++expected;
    }
}

void passesFresh(const QuiltView& v, Report& report) {
    if (v.quilt.passes.empty() && v.stopped())
        return;
    std::vector<Rect> areas;
    for (const Pass& p : v.quilt.passes)
        areas.insert(areas.end(), p.fresh.parts.begin(), p.fresh.parts.end());
    if (const auto fault = partitionFault(v.top, areas))
        report.add(where(v) / "passes",
                   v.label() + ": the new areas of the passes do not divide the top: " +
                       text(*fault, v.plan.unit));
}

void passesField(const QuiltView& v, Report& report) {
    // A patch lies inside the rim with all of it, a pin with its middle.
    const bool patches = seenWay(v.job).patches;
    const Length half = patches ? v.job.basting.spacing / 2 : Length{};
    const Length rim = v.session.setting.room.inset + half;
    for (const Pass& p : v.quilt.passes) {
        const Interval x = fieldAlong(p.table.x(), v.top.x(), rim);
        const Interval y = fieldAlong(p.table.y(), v.top.y(), rim);
        const Rect all = v.quilt.surface.floor ? v.top : Rect{x.lo, y.lo, x.hi, y.hi};
        // At a wall it keeps clear of all of the quilt, rolled.
        Rect right = all;
        for (const Side wall : walls(v)) {
            if (std::ranges::find(p.rolls, wall, &Roll::side) == p.rolls.end())
                continue;
            const Size backing = v.quilt.layers.backing;
            const Length rolled = diameterOf(v, isAcross(wall) ? backing.length : backing.width);
            const Length room = std::max(rolled, v.session.setting.room.inset) + half;
            if (wall == Side::head)
                right.y0 = std::max(right.y0, p.table.y0 + room);
            if (wall == Side::foot)
                right.y1 = std::min(right.y1, p.table.y1 - room);
            if (wall == Side::left)
                right.x0 = std::max(right.x0, p.table.x0 + room);
            if (wall == Side::right)
                right.x1 = std::min(right.x1, p.table.x1 - room);
        }
        const auto off = [](Length a, Length b) { return !near(a, b, kFine); };
        if (off(p.field.x0, right.x0) || off(p.field.y0, right.y0) || off(p.field.x1, right.x1) ||
            off(p.field.y1, right.y1))
            report.add(
                where(v, p) / "field",
                label(v, p) + ": the field is " + box(p.field, v.plan.unit) +
                    "; the table inside its rim, clear of what lies rolled at a wall, and the "
                    "top share " +
                    box(right, v.plan.unit) + ".");
        for (const Zone& z : v.quilt.zones)
            for (const PlacedPoint& point : z.points)
                if (z.pass == p.number && !p.field.grown(kFine).contains(point.at))
                    report.add(where(v, z, point),
                               label(v, p) + ": the point at " + place(point.at, v.plan.unit) +
                                   " lies outside the field " + box(p.field, v.plan.unit) + ".");
        // Of patches it is half of one, as exactly as bands are marked.
        const Length most =
            patches ? half + Length::inch64ths(8) : v.job.basting.spacing + v.job.basting.edge;
        if (!p.field.grown(most).contains(p.fresh.bounds()))
            report.add(where(v, p) / "fresh",
                       label(v, p) + ": the new area " + box(p.fresh.bounds(), v.plan.unit) +
                           " reaches farther beyond the field " + box(p.field, v.plan.unit) +
                           " than the boundary between two rows can.");
    }
}

void passesShift(const QuiltView& v, Report& report) {
    const Pass* last = nullptr;
    for (const Pass& p : v.quilt.passes) {
        // The quilt moves one way as its table seems, from the quilt, to move the other way.
        const Vec shift =
            last == nullptr ? Vec{} : Vec{last->table.x0 - p.table.x0, last->table.y0 - p.table.y0};
        if (p.shift != shift)
            report.add(where(v, p) / "shift", label(v, p) + ": the shift is said to be " +
                                                  place({p.shift.dx, p.shift.dy}, v.plan.unit) +
                                                  "; the tables' places give " +
                                                  place({shift.dx, shift.dy}, v.plan.unit) + ".");
        last = &p;
    }
}

void passesWorth(const QuiltView& v, Report& report) {
    if (v.quilt.zones.empty())
        return;
    for (const Pass& p : v.quilt.passes)
        if (pointsOf(v, p).empty())
            report.add(where(v, p), label(v, p) + " has no points: it is not worth its shift.");
}

void passesTouch(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes) {
        const auto earlier = before(v, p);
        const bool touches = std::ranges::any_of(earlier, [&](const Pass* e) {
            return std::ranges::any_of(kSides,
                                       [&](Side s) { return touchesAt(p.fresh, e->fresh, s); });
        });
        if (!earlier.empty() && !touches)
            report.add(where(v, p) / "fresh",
                       label(v, p) + ": the new area does not touch a basted one.");
    }
}

void passesAnchor(const QuiltView& v, Report& report) {
    constexpr Length deep = Length::inches(6);
    for (const Pass& p : v.quilt.passes)
        for (const Pass* touched : before(v, p))
            for (const Side side : kSides)
                for (const Rect& anchor : anchorsAt(p.fresh, touched->fresh, side, deep))
                    for (const Pass* basted : before(v, p))
                        for (const Rect& area : basted->fresh.parts) {
                            const Rect part = intersection(anchor, area);
                            // Along the boundary only as far as the new area lies on the table.
                            const Rect seen =
                                isAcross(side)
                                    ? intersection(part, {p.table.x0, part.y0, p.table.x1, part.y1})
                                    : intersection(part,
                                                   {part.x0, p.table.y0, part.x1, p.table.y1});
                            if (!part.empty() && (seen.empty() || !p.table.contains(seen)))
                                report.add(where(v, p) / "table",
                                           label(v, p) + ": " + figure(deep, v.plan.unit) +
                                               " of pass " + std::to_string(touched->number) +
                                               " must stay on the table as an anchor; " +
                                               box(part, v.plan.unit) + " is not all on it.");
                        }
}

void passesStart(const QuiltView& v, Report& report) {
    const Alternative* how = chosen(v);
    if (how == nullptr || v.quilt.passes.empty())
        return;
    const Pass& first = v.quilt.passes.front();
    const Rect area = firstArea(v);
    if (area == v.top)
        return; // all in one pass
    const Point centre = v.top.middle(), table = first.table.middle();
    if (how->start == Basting::Start::centred) {
        const bool x = area.x() == v.top.x() || near(table.x, centre.x, kHalving);
        const bool y = area.y() == v.top.y() || near(table.y, centre.y, kHalving);
        if (!x || !y)
            report.add(where(v, first) / "table",
                       label(v, first) + ": the start is centred, but the middle of the table, " +
                           place(table, v.plan.unit) + ", is not the top's, " +
                           place(centre, v.plan.unit) + ".");
        return;
    }
    if (how->start == Basting::Start::oneEnd) {
        if ((area.x0 != v.top.x0 && area.x1 != v.top.x1) ||
            (area.y0 != v.top.y0 && area.y1 != v.top.y1))
            report.add(where(v, first) / "fresh",
                       label(v, first) + ": the start is at one end, but the new area, " +
                           box(area, v.plan.unit) + ", does not lie there.");
        return;
    }
    // Half a row beyond the middle, or to the end of the top: the rows next to the middle lie in
    // the first pass. On a very small field a third of it.
    const auto inside = [&](Interval fresh, Interval top, Length size) {
        const Length asked = std::min(v.job.basting.spacing / 2, size / 4);
        if (seenWay(v.job).patches) // with a patch in the middle that alone
            return fresh.lo <= top.middle() + kHalving && fresh.hi >= top.middle() - kHalving;
        return (top.middle() - fresh.lo >= asked - kHalving || fresh.lo <= top.lo) &&
               (fresh.hi - top.middle() >= asked - kHalving || fresh.hi >= top.hi);
    };
    if (!inside(area.x(), v.top.x(), first.table.width()) ||
        !inside(area.y(), v.top.y(), first.table.length()))
        report.add(where(v, first) / "fresh",
                   label(v, first) + ": the top's centre is not a row inside the first area, " +
                       box(area, v.plan.unit) + ".");
}

namespace {

/// Where a wish for the way was not followed and no finding tells it: what was wished for, and the
/// key of it.
std::optional<std::pair<std::string_view, std::string>> notAskedFor(const QuiltView& v,
                                                                    const Alternative& how) {
    const Basting& asked = v.job.basting;
    const bool starts =
        asked.start == Basting::Start::best || how.start == asked.start || how.passes == 1;
    if (!starts && v.tells(Finding::Kind::otherStart) == nullptr)
        return std::pair{"start", "the start"};
    if (v.quilt.surface.floor)
        return {};
    const bool along = v.quilt.surface.quiltLengthAlongLength;
    if (asked.along != Basting::Along::either &&
        (asked.along == Basting::Along::tableLength) != along &&
        v.tells(Finding::Kind::otherLie) == nullptr)
        return std::pair{"quilt_length_along", "the side of the table"};
    const auto& together = v.session.setting.room.together;
    if (together && v.tells(Finding::Kind::otherTables) == nullptr &&
        (together->length != v.quilt.surface.length || together->width != v.quilt.surface.width))
        return std::pair{"surface", "the rectangle of tables"};
    return {};
}

} // namespace

void passesAlternatives(const QuiltView& v, Report& report) {
    if (v.quilt.passes.empty() && v.stopped())
        return;
    const auto number = std::ranges::count_if(v.quilt.alternatives, &Alternative::chosen);
    if (number != 1) {
        report.add(where(v) / "alternatives",
                   v.label() + ": " + std::to_string(number) +
                       " ways to do the passes are marked as chosen; it must be one.");
        return;
    }
    const Alternative& how = *chosen(v);
    const Pointer there = where(v).in("alternatives", v.quilt.alternatives, how);
    const auto differs = [&](std::string_view key, const std::string& what) {
        report.add(there / key,
                   v.label() + ": the chosen way and the plan differ in " + what + ".");
    };
    const auto pulls = std::ranges::count(v.quilt.passes, true, &Pass::pulled);
    const auto passes = std::ssize(v.quilt.passes) - pulls;
    if (how.passes != passes || how.pulls != pulls)
        differs(how.passes != passes ? "passes" : "pulls",
                "the number of passes (" + std::to_string(how.passes) + " and " +
                    std::to_string(how.pulls) + " pulls, " + std::to_string(passes) + " and " +
                    std::to_string(pulls) + ")");
    if (how.quiltLengthAlongLength != v.quilt.surface.quiltLengthAlongLength)
        differs("quilt_length_along", "how the quilt lies on the table");
    const SurfacePlan& surface = v.quilt.surface;
    if (how.surfaceLength != surface.length || how.surfaceWidth != surface.width)
        differs(how.surfaceLength != surface.length ? "surface_length" : "surface_width",
                "the table (" + box({{}, {}, how.surfaceLength, how.surfaceWidth}, v.plan.unit) +
                    " and " + box({{}, {}, surface.length, surface.width}, v.plan.unit) + ")");
    if (how.start == Basting::Start::best)
        differs("start", "what a start is");
    if (const auto missed = notAskedFor(v, how))
        differs(missed->first, missed->second + " that was asked for, and nothing says so");
    if (!how.workable)
        report.add(there / "workable", v.label() + ": the chosen way is marked as out of reach.");
    if (v.quilt.bounds.passes < 1 || passes < v.quilt.bounds.passes)
        report.add(where(v) / "bounds/passes",
                   v.label() + ": " + std::to_string(passes) +
                       " passes are planned, but the bound is said to be " +
                       std::to_string(v.quilt.bounds.passes) + ".");
}

void passesSmoothing(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        if (std::ranges::adjacent_find(p.smoothTowards, std::greater_equal<>{}) !=
            p.smoothTowards.end())
            report.add(where(v, p) / "smooth_towards",
                       label(v, p) + ": the sides it is smoothed towards are out of order.");
    for (const Pass& p : v.quilt.passes)
        for (const Side side : kSides) {
            const auto basted = before(v, p);
            const bool atBasted = std::ranges::any_of(
                basted, [&](const Pass* e) { return touchesAt(p.fresh, e->fresh, side); });
            const bool towards = std::ranges::find(p.smoothTowards, side) != p.smoothTowards.end();
            if (atBasted && towards)
                report.add(where(v, p) / "smooth_towards",
                           label(v, p) + ": smoothed towards the " + std::string{name(side)} +
                               ", where a basted area holds the layers.");
            if (!atBasted && !towards)
                report.add(where(v, p) / "smooth_towards",
                           label(v, p) + ": not smoothed towards the " + std::string{name(side)} +
                               ", where nothing is basted.");
        }
}

} // namespace bastewright::check
