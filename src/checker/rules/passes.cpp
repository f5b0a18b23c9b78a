#include "checker/geometry/partition.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <optional>

namespace bastewright::check {
namespace {

/// How far the quilt's centre lies inside the first field when the start is not centred.
constexpr Length kCentreInside = Length::inches(12);

std::string label(const QuiltView& v, const Pass& p) {
    return v.label() + ", pass " + std::to_string(p.number);
}

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

/// Where not all of a table can be reached, work keeps to a strip along one open side.
bool isStripAtOpenSide(const QuiltView& v, const Rect& strip, const Rect& all) {
    const auto open = [&](Side s) {
        return std::ranges::find(v.quilt.surface.closed, s) == v.quilt.surface.closed.end();
    };
    if (strip.empty() || !all.contains(strip))
        return false;
    if (strip.x() == all.x())
        return (strip.y0 == all.y0 && open(Side::head)) || (strip.y1 == all.y1 && open(Side::foot));
    return strip.y() == all.y() &&
           ((strip.x0 == all.x0 && open(Side::left)) || (strip.x1 == all.x1 && open(Side::right)));
}

const Alternative* chosen(const QuiltView& v) {
    const auto it = std::ranges::find_if(v.quilt.alternatives, &Alternative::chosen);
    return it == v.quilt.alternatives.end() ? nullptr : &*it;
}

/// A start beside the middle: by no more than half a block each way, and the first field lies
/// there.
void besideCentre(const QuiltView& v, const Pass& first, Vec off, Report& report) {
    const auto& grid = v.job.top.grid;
    const Length halfX = grid ? grid->block / 2 : Length::inches(6);
    const Length halfY = grid ? grid->blockHeight() / 2 : Length::inches(6);
    const Point centre = v.top.middle(), field = first.field.middle();
    if (abs(off.dx) > halfX + kHalving || abs(off.dy) > halfY + kHalving)
        report.add(label(v, first) + ": the start lies " + place({off.dx, off.dy}, v.plan.unit) +
                   " off the middle; half a block is the most.");
    if (!near(field.x, centre.x + off.dx, kHalving) || !near(field.y, centre.y + off.dy, kHalving))
        report.add(label(v, first) + ": the middle of the field, " + place(field, v.plan.unit) +
                   ", is not as far off the top's as the chosen way says.");
}

} // namespace

void passesNumbers(const QuiltView& v, Report& report) {
    int expected = 1;
    for (const Pass& p : v.quilt.passes) {
        if (p.number != expected)
            report.add(label(v, p) + " comes where pass " + std::to_string(expected) +
                       " is expected.");
        ++expected;
    }
}

void passesFresh(const QuiltView& v, Report& report) {
    std::vector<Rect> areas;
    for (const Pass& p : v.quilt.passes)
        areas.insert(areas.end(), p.fresh.parts.begin(), p.fresh.parts.end());
    if (const auto fault = partitionFault(v.top, areas))
        report.add(v.label() + ": the new areas of the passes do not divide the top: " +
                   text(*fault, v.plan.unit));
}

void passesField(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes) {
        const Rect all = v.quilt.surface.floor
                             ? v.top
                             : intersection(p.table.grown(-v.session.setting.room.inset), v.top);
        if (p.field != all && !isStripAtOpenSide(v, p.field, all))
            report.add(label(v, p) + ": the field is " + box(p.field, v.plan.unit) +
                       "; the table inside its rim and the top share " + box(all, v.plan.unit) +
                       ", and it is no strip of that along an open side.");
        if (!p.field.contains(p.fresh.bounds()))
            report.add(label(v, p) + ": the new area " + box(p.fresh.bounds(), v.plan.unit) +
                       " reaches beyond the field " + box(p.field, v.plan.unit) + ".");
    }
}

void passesShift(const QuiltView& v, Report& report) {
    const Pass* last = nullptr;
    for (const Pass& p : v.quilt.passes) {
        // The quilt moves one way as its table seems, from the quilt, to move the other way.
        const Vec shift =
            last == nullptr ? Vec{} : Vec{last->table.x0 - p.table.x0, last->table.y0 - p.table.y0};
        if (p.shift != shift)
            report.add(label(v, p) + ": the shift is said to be " +
                       place({p.shift.dx, p.shift.dy}, v.plan.unit) + "; the tables' places give " +
                       place({shift.dx, shift.dy}, v.plan.unit) + ".");
        last = &p;
    }
}

void passesTouch(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes) {
        const auto earlier = before(v, p);
        const bool touches = std::ranges::any_of(earlier, [&](const Pass* e) {
            return std::ranges::any_of(kSides,
                                       [&](Side s) { return touchesAt(p.fresh, e->fresh, s); });
        });
        if (!earlier.empty() && !touches)
            report.add(label(v, p) + ": the new area does not touch a basted one.");
    }
}

void passesAnchor(const QuiltView& v, Report& report) {
    const Length deep = std::max(Length::inches(6), v.job.basting.spacing + Length::inches(2));
    for (const Pass& p : v.quilt.passes)
        for (const Pass* touched : before(v, p))
            for (const Side side : kSides)
                for (const Rect& anchor : anchorsAt(p.fresh, touched->fresh, side, deep))
                    for (const Pass* basted : before(v, p))
                        for (const Rect& area : basted->fresh.parts) {
                            const Rect part = intersection(anchor, area);
                            if (!part.empty() && !p.field.contains(part))
                                report.add(label(v, p) + ": " + figure(deep, v.plan.unit) +
                                           " of pass " + std::to_string(touched->number) +
                                           " must stay on the table as an anchor; " +
                                           box(part, v.plan.unit) + " is not all in the field.");
                        }
}

void passesStart(const QuiltView& v, Report& report) {
    const Alternative* how = chosen(v);
    if (how == nullptr || v.quilt.passes.empty())
        return;
    const Pass& first = v.quilt.passes.front();
    const Point centre = v.top.middle();
    if (how->start == Basting::Start::centred && how->offCentre != Vec{}) {
        besideCentre(v, first, how->offCentre, report);
        return;
    }
    if (how->start == Basting::Start::centred) {
        const Point middle = first.fresh.bounds().middle();
        if (!near(middle.x, centre.x, kHalving) || !near(middle.y, centre.y, kHalving))
            report.add(label(v, first) +
                       ": the start is centred, but the middle of the new area, " +
                       place(middle, v.plan.unit) + ", is not the top's, " +
                       place(centre, v.plan.unit) + ".");
        return;
    }
    // The whole way where the top ends before, half the field where the table is smaller than
    // twice.
    const auto inside = [](Interval field, Interval top) {
        const Length asked = std::min(kCentreInside, field.size() / 2);
        const Length middle = top.middle();
        return (middle - field.lo >= asked - kHalving || field.lo <= top.lo) &&
               (field.hi - middle >= asked - kHalving || field.hi >= top.hi);
    };
    if (!inside(first.field.x(), v.top.x()) || !inside(first.field.y(), v.top.y()))
        report.add(label(v, first) + ": the top's centre is not " +
                   figure(kCentreInside, v.plan.unit) + " inside the first field, " +
                   box(first.field, v.plan.unit) + ".");
}

namespace {

/// Where a wish for the way was not followed and no finding tells it: what was wished for.
std::string notAskedFor(const QuiltView& v, const Alternative& how) {
    const auto told = [&](std::string_view field) {
        return std::ranges::any_of(v.plan.findings, [&](const Finding& f) {
            return f.level != Finding::Level::note && f.field.ends_with(field);
        });
    };
    const Basting& asked = v.job.basting;
    const bool beside = how.offCentre != Vec{};
    const bool starts = asked.start == Basting::Start::best ||
                        (asked.start == Basting::Start::besideMiddle
                             ? how.start == Basting::Start::centred && beside
                             : how.start == asked.start &&
                                   !(asked.start == Basting::Start::centred && beside));
    if (!starts && !told("/basting/start"))
        return "the start";
    if (v.quilt.surface.floor)
        return {};
    const bool along = v.quilt.surface.quiltLengthAlongLength;
    if (asked.along != Basting::Along::either &&
        (asked.along == Basting::Along::tableLength) != along &&
        !told("/basting/quilt_length_along"))
        return "the side of the table";
    const auto& together = v.session.setting.room.together;
    if (together && !told("/room/together") &&
        (together->length != v.quilt.surface.length || together->width != v.quilt.surface.width))
        return "the rectangle of tables";
    return {};
}

} // namespace

void passesAlternatives(const QuiltView& v, Report& report) {
    const auto number = std::ranges::count_if(v.quilt.alternatives, &Alternative::chosen);
    if (number != 1) {
        report.add(v.label() + ": " + std::to_string(number) +
                   " ways to do the passes are marked as chosen; it must be one.");
        return;
    }
    const Alternative& how = *chosen(v);
    const auto differs = [&](const std::string& what) {
        report.add(v.label() + ": the chosen way and the plan differ in " + what + ".");
    };
    if (how.passes != std::ssize(v.quilt.passes))
        differs("the number of passes (" + std::to_string(how.passes) + " and " +
                std::to_string(v.quilt.passes.size()) + ")");
    if (how.quiltLengthAlongLength != v.quilt.surface.quiltLengthAlongLength)
        differs("how the quilt lies on the table");
    if (how.surface != v.quilt.surface.name)
        differs("the table ('" + how.surface.english() + "' and '" +
                v.quilt.surface.name.english() + "')");
    if (how.start == Basting::Start::best || how.start == Basting::Start::besideMiddle)
        differs("what a start is");
    if (const std::string missed = notAskedFor(v, how); !missed.empty())
        differs(missed + " that was asked for, and nothing says so");
    if (!how.workable)
        report.add(v.label() + ": the chosen way is marked as out of reach.");
    if (v.quilt.bounds.passes < 1 || std::ssize(v.quilt.passes) < v.quilt.bounds.passes)
        report.add(v.label() + ": " + std::to_string(v.quilt.passes.size()) +
                   " passes are planned, but the bound is said to be " +
                   std::to_string(v.quilt.bounds.passes) + ".");
}

void passesSmoothing(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes)
        for (const Side side : kSides) {
            const auto basted = before(v, p);
            const bool atBasted = std::ranges::any_of(basted, [&](const Pass* e) {
                return touchesAt(p.fresh, e->fresh, side);
            });
            const bool towards = std::ranges::find(p.smoothTowards, side) != p.smoothTowards.end();
            if (atBasted && towards)
                report.add(label(v, p) + ": smoothed towards the " + std::string{name(side)} +
                           ", where a basted area holds the layers.");
            if (!atBasted && !towards)
                report.add(label(v, p) + ": not smoothed towards the " + std::string{name(side)} +
                           ", where nothing is basted.");
        }
}

void passesLift(const QuiltView& v, Report& report) {
    // Load constant of the revised NIOSH lifting equation (Publication 94-110): the most one person
    // lifts under the best conditions.
    constexpr double kLoadConstant = 23;
    for (const Pass& p : v.quilt.passes)
        if (p.liftPeople < 1 || !(p.liftKilograms >= 0) ||
            p.liftKilograms > kLoadConstant * p.liftPeople)
            report.add(label(v, p) + ": " + std::to_string(p.liftPeople) + " people lift " +
                       figure(p.liftKilograms) + " kg; 23 kg each is the most.");
}

} // namespace bastewright::check
