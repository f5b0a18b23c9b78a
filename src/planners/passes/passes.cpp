#include "planners/passes/passes.h"

#include "planners/passes/holds.h"
#include "planners/passes/predict.h"
#include "planners/rolls/lifting.h"

#include <algorithm>

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

/// Away from what is basted: every side of a fresh area at which nothing that was basted earlier
/// touches it.
std::vector<Side> smoothTowards(const Region& fresh, std::span<const Pass> earlier) {
    const auto touches = [&](const Pass& q, Side s) {
        return std::ranges::any_of(
            fresh.parts, [&](const Rect& part) { return q.fresh.overlaps(justBeyond(part, s)); });
    };
    std::vector<Side> out;
    for (const Side s : kSides)
        if (std::ranges::none_of(earlier, [&](const Pass& q) { return touches(q, s); }))
            out.push_back(s);
    return out;
}

/// What of an axis lies on the table, inside the rim where the top goes on past its edge.
Interval fieldAlong(const AxisTable& table, Length at, Length quilt) {
    const Length lo = at <= -table.pastLo ? Length{} : at + table.insetLo;
    const Length hi =
        at + table.size >= quilt + table.pastHi ? quilt : at + table.size - table.insetHi;
    return {std::clamp(lo, Length{}, quilt), std::clamp(hi, Length{}, quilt)};
}

Rect fieldOf(const PassChoice& choice, Point at) {
    const Interval x = fieldAlong(choice.lie.x, at.x, choice.board->x.quilt);
    const Interval y = fieldAlong(choice.lie.y, at.y, choice.board->y.quilt);
    return {x.lo, y.lo, x.hi, y.hi};
}

Region intersectionOf(const Region& region, const Rect& with) {
    Region out;
    for (const Rect& part : region.parts)
        if (const Rect shared = intersection(part, with); !shared.empty())
            out.parts.push_back(shared);
    return out;
}

/// Builds the passes one after another.
class Details {
public:
    Details(const PassRequest& request, const PassChoice& choice, std::vector<Pass> earlier)
        : request_{request}
        , choice_{choice}
        , envelope_{topEnvelope(request.job.top)}
        , hands_{liftersFor(request)}
        , kilograms_{quiltKilograms(request.job, request.layers.backing)}
        , out_{std::move(earlier)} {}

    std::vector<Pass> all() && {
        for (const Step& step : choice_.sequence.steps) {
            Region fresh = regionOf(*choice_.board, choice_.sequence.cells, step.fresh);
            std::vector<Region> pulled;
            for (const Pull& pull : step.pulls) {
                const Rect across = areaOf(*choice_.board, pull.window);
                pulled.push_back(intersectionOf(fresh, across));
                fresh = without(fresh, across);
            }
            add(std::move(fresh), step.at, false);
            for (std::size_t i = 0; i < pulled.size(); ++i)
                if (!pulled[i].empty())
                    add(std::move(pulled[i]), step.pulls[i].at, true);
        }
        return std::move(out_);
    }

private:
    const PassRequest& request_;
    const PassChoice& choice_;
    Rect envelope_;
    int hands_;
    double kilograms_;
    std::vector<Pass> out_;

    void add(Region fresh, Point at, bool pulled) {
        const LayerSizes& layers = request_.layers;
        const Lie& lie = choice_.lie;
        Pass p;
        p.number = static_cast<int>(out_.size()) + 1;
        p.pulled = pulled;
        p.table = {at.x, at.y, at.x + lie.x.size, at.y + lie.y.size};
        if (choice_.surface.floor) {
            const PerSide<Length> s = spare(layers.backing, layers.top);
            p.table =
                Rect{-s.left, -s.head, layers.top.width + s.right, layers.top.length + s.foot};
        }
        p.field = choice_.surface.floor ? Rect{{}, {}, layers.top.width, layers.top.length}
                                        : fieldOf(choice_, at);
        if (!out_.empty()) {
            const Rect& before = out_.back().table;
            p.shift = {before.x0 - p.table.x0, before.y0 - p.table.y0};
            p.liftPeople = hands_;
            p.liftKilograms = kilograms_;
        }
        p.backingOverhang = overhang(layers.backing, layers.top, p.table);
        p.battingOverhang = overhang(layers.batting, layers.top, p.table);
        p.topOverhang = overhang(layers.top, layers.top, p.table);
        const Size reach{envelope_.width(), envelope_.length()};
        p.backingSpare = spare(layers.backing, reach);
        p.battingSpare = spare(layers.batting, reach);
        const std::vector<Side> walls = sidesAtWalls(request_.setting.room, lie.closed);
        p.beyond = beyond({.backing = p.backingOverhang,
                           .top = p.topOverhang,
                           .walls = walls,
                           .floor = choice_.surface.floor,
                           .rolled = choice_.start == Basting::Start::oneEnd,
                           .spareTable = request_.alone &&
                                         hasSpareTable(request_.setting.room, choice_.surface)});
        p.rolls = passRolls(request_.job, request_.setting.stash, layers.backing, layers.top, p);
        // What is pulled across stays held by what is basted round it.
        if (!pulled)
            p.holds = holds(layers.backing, layers.top, p.table, fresh.bounds(), p.beyond,
                            choice_.surface.floor, request_.job.unit);
        p.smoothTowards = smoothTowards(fresh, out_);
        p.fresh = std::move(fresh);
        out_.push_back(std::move(p));
    }
};

} // namespace

std::vector<Pass> detailedPasses(const PassRequest& request, const PassChoice& choice,
                                 std::vector<Pass> earlier) {
    return Details{request, choice, std::move(earlier)}.all();
}

} // namespace bastewright
