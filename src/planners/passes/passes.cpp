#include "planners/passes/passes.h"

#include "planners/passes/holds.h"
#include "planners/passes/predict.h"
#include "planners/rolls/lifting.h"

#include <set>

namespace bastewright {
namespace {

/// A band one inch wide just outside a side of an area.
Rect justBeyond(const Rect& r, Side s) {
    const Length band = Length::inches(1);
    switch (s) {
    case Side::head:
        return {r.x0, r.y0 - band, r.x1, r.y0};
    case Side::foot:
        return {r.x0, r.y1, r.x1, r.y1 + band};
    case Side::left:
        return {r.x0 - band, r.y0, r.x0, r.y1};
    case Side::right:
        return {r.x1, r.y0, r.x1 + band, r.y1};
    }
    return r;
}

/// Away from what is basted: every side of a fresh area that no earlier one touches.
std::vector<Side> smoothTowards(const Rect& fresh, std::span<const Pass> earlier) {
    std::vector<Side> out;
    for (const Side s : kSides)
        if (std::ranges::none_of(
                earlier, [&](const Pass& q) { return q.fresh.overlaps(justBeyond(fresh, s)); }))
            out.push_back(s);
    return out;
}

LayoutInput layoutInput(const PassRequest& request, const PassChoice& choice,
                        const SeamLines& seams) {
    return {.top = request.layers.top,
            .surface = choice.workable,
            .anchor = choice.anchor,
            .row = request.job.basting.spacing,
            .start = choice.start,
            .seamsX = seams.x,
            .seamsY = seams.y};
}

/// The quickest of the shapes with the fewest passes, with its order.
bool settle(const PassRequest& request, const SeamLines& seams, PassChoice& choice) {
    const LayoutInput in = layoutInput(request, choice, seams);
    const std::vector<Layout> all = layouts(in);
    if (all.empty())
        return false;
    choice.leastPasses = leastPasses(in);
    bool found = false;
    for (const Layout& layout : all) {
        if (layout.areas.size() > all.front().areas.size())
            break;
        const WorkingOrder order = bestOrder(layout);
        if (!found || order.shifted < choice.order.shifted) {
            choice.layout = layout;
            choice.order = order;
            found = true;
        }
    }
    return found;
}

Length largestShift(const PassChoice& choice) {
    Length most;
    for (std::size_t i = 1; i < choice.order.areas.size(); ++i)
        most = std::max(most, way(shiftBetween(choice.layout.areas[choice.order.areas[i - 1]],
                                               choice.layout.areas[choice.order.areas[i]])));
    return most;
}

/// Why nothing fits on a surface.
std::string unworkable(const PassChoice& choice, Length reach, Unit unit) {
    const Rect& field = choice.workable.field;
    if (field.empty())
        return "no place on it is within a reach of " + format(reach, unit);
    const std::string size =
        format(field.width(), unit, false) + " × " + format(field.length(), unit);
    const std::string usable =
        choice.workable.whole
            ? "only " + size + " of it is inside the rim"
            : "only " + size + " of it is within a reach of " + format(reach, unit);
    return usable + ", too little to shift the quilt along in " + std::to_string(kMostPasses) +
           " passes";
}

std::vector<Basting::Start> starts(Basting::Start wanted) {
    if (wanted != Basting::Start::best)
        return {wanted};
    return {Basting::Start::centred, Basting::Start::fewestShifts};
}

} // namespace

Length anchorStrip(const Basting& basting) {
    return std::max(Length::inches(6), basting.spacing + Length::inches(2));
}

SeamLines seamLines(const Top& top) {
    std::set<Length> x, y;
    const Rect area = topRect(top);
    // Only seams that cross most of the top show people where to stop.
    for (const Segment& s : seamsOf(top)) {
        if (s.from.x == s.to.x && abs(s.to.y - s.from.y) * 4 >= area.length() * 3)
            x.insert(s.from.x);
        if (s.from.y == s.to.y && abs(s.to.x - s.from.x) * 4 >= area.width() * 3)
            y.insert(s.from.y);
    }
    return {{x.begin(), x.end()}, {y.begin(), y.end()}};
}

std::vector<PassChoice> passChoices(const PassRequest& request,
                                    std::span<const Arrangement> surfaces) {
    const SeamLines seams = seamLines(request.job.top);
    const Length reach = commonReach(request.setting.helpers);
    std::vector<PassChoice> out;
    for (const Arrangement& surface : surfaces)
        for (const bool along : {false, true}) {
            // On the floor the quilt is not turned to suit anything.
            if (surface.floor && along)
                continue;
            for (const Basting::Start start : starts(request.job.basting.start)) {
                PassChoice c{.surface = surface, .quiltLengthAlongLength = along, .start = start};
                c.workable = workable(surface, request.setting.room, along, reach);
                if (surface.floor)
                    c.workable.field = {
                        {}, {}, request.layers.top.width, request.layers.top.length};
                c.anchor = anchorStrip(request.job.basting);
                Alternative& a = c.summary;
                a.surface = surface.name;
                a.start = start;
                a.quiltLengthAlongLength = along;
                a.workable = settle(request, seams, c);
                if (!a.workable) {
                    a.why = unworkable(c, reach, request.job.unit);
                } else {
                    a.passes = static_cast<int>(c.layout.areas.size());
                    a.largestShift = largestShift(c);
                    a.predicted = predictedTime(request, c);
                    a.lifts = a.passes > 1 && liftersFor(request) > 1 ? a.passes - 1 : 0;
                    if (!c.workable.whole)
                        a.why = "only the part within a reach of " +
                                format(reach, request.job.unit) + " is used";
                }
                out.push_back(std::move(c));
            }
        }
    std::ranges::stable_sort(out, [](const PassChoice& a, const PassChoice& b) {
        if (a.summary.workable != b.summary.workable)
            return a.summary.workable;
        if (a.summary.predicted != b.summary.predicted)
            return a.summary.predicted < b.summary.predicted;
        return a.surface.tables.size() < b.surface.tables.size();
    });
    return out;
}

SurfacePlan surfacePlan(const PassChoice& choice, int number) {
    return {.name = choice.surface.name,
            .number = number,
            .length = choice.surface.length,
            .width = choice.surface.width,
            .floor = choice.surface.floor,
            .quiltLengthAlongLength = choice.quiltLengthAlongLength,
            .tables = choice.surface.tables,
            .closed = choice.workable.closed};
}

std::vector<Segment> jointsUnderQuilt(const SurfacePlan& surface, const Rect& table) {
    // Turned with the quilt's length along the surface's: drawn left is the quilt's head, drawn
    // foot its left.
    const auto turned = [&](Point p) {
        return surface.quiltLengthAlongLength ? Point{surface.width - p.y, p.x} : p;
    };
    const auto moved = [&](Point p) { return Point{p.x + table.x0, p.y + table.y0}; };
    std::vector<Segment> out;
    for (const Segment& s : jointsBetween(surface.tables))
        out.push_back({moved(turned(s.from)), moved(turned(s.to))});
    return out;
}

std::vector<Pass> detailedPasses(const PassRequest& request, const PassChoice& choice) {
    const LayerSizes& layers = request.layers;
    const int hands = liftersFor(request);
    const double kilograms = quiltKilograms(request.job, layers.backing);
    std::vector<Pass> out;
    for (std::size_t i = 0; i < choice.order.areas.size(); ++i) {
        const FreshArea& area = choice.layout.areas[choice.order.areas[i]];
        Pass p;
        p.number = static_cast<int>(i) + 1;
        p.field = area.field;
        p.fresh = area.fresh;
        p.table = area.table;
        if (i > 0)
            p.shift = shiftBetween(choice.layout.areas[choice.order.areas[i - 1]], area);
        if (choice.surface.floor) {
            const PerSide<Length> s = spare(layers.backing, layers.top);
            p.table =
                Rect{-s.left, -s.head, layers.top.width + s.right, layers.top.length + s.foot};
        }
        p.holds = holds(layers.backing, layers.top, p.table, choice.surface.floor);
        p.backingOverhang = overhang(layers.backing, layers.top, p.table);
        p.battingOverhang = overhang(layers.batting, layers.top, p.table);
        p.topOverhang = overhang(layers.top, layers.top, p.table);
        p.backingSpare = spare(layers.backing, layers.top);
        p.battingSpare = spare(layers.batting, layers.top);
        p.rolls =
            passRolls(request.job, request.setting.stash, layers.backing, layers.top, p.table);
        p.smoothTowards = smoothTowards(p.fresh, out);
        if (i > 0) {
            p.liftPeople = hands;
            p.liftKilograms = kilograms;
        }
        out.push_back(std::move(p));
    }
    return out;
}

} // namespace bastewright
