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
    const Rect envelope = topEnvelope(request.job.top);
    const Size reach{envelope.width(), envelope.length()};
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
        p.backingSpare = spare(layers.backing, reach);
        p.battingSpare = spare(layers.batting, reach);
        p.rolls =
            passRolls(request.job, request.setting.stash, layers.backing, layers.top, p.table);
        p.smoothTowards = smoothTowards(area.fresh, out);
        if (i > 0) {
            p.liftPeople = hands;
            p.liftKilograms = kilograms;
        }
        out.push_back(std::move(p));
    }
    return out;
}

} // namespace bastewright
