#include "planners/points/pattern_list.h"

#include "planners/points/line_clip.h"

#include <algorithm>

namespace bastewright::points {
namespace {

Length exact(double in) {
    return Length::nearestInches(in);
}

PointPattern drawn(const Job& job, const Rules& rules, std::string name, const Field& tile,
                   int times, Spots places) {
    PointPattern out;
    out.name = std::move(name);
    out.tile = {exact(tile.width()), exact(tile.length())};
    out.times = times;
    std::sort(places.begin(), places.end(),
              [](Spot a, Spot b) { return a.y != b.y ? a.y < b.y : a.x < b.x; });
    for (const Spot p : places)
        out.points.push_back({{exact(p.x - tile.x0), exact(p.y - tile.y0)}, rules.angleAt(p)});
    for (const Segment& s : seamsOf(job.top))
        if (const auto part =
                clipped({{s.from.x.in(), s.from.y.in()}, {s.to.x.in(), s.to.y.in()}}, tile))
            out.seams.push_back({{exact(part->from.x - tile.x0), exact(part->from.y - tile.y0)},
                                 {exact(part->to.x - tile.x0), exact(part->to.y - tile.y0)}});
    return out;
}

std::string sideName(const AxisKinds& axis, int kind, const char* low, const char* high) {
    if (axis.tiles == 1 || axis.kinds[static_cast<std::size_t>(kind)].periodic)
        return "";
    return kind == 0 ? low : high;
}

/// The border of a stretch, as deep as its points reach.
Field borderOf(const RepeatFrame& f, int place, const Spots& points) {
    Field out = f.field(place);
    const auto& kx = f.x.kinds[static_cast<std::size_t>(f.xKind(place))];
    const auto& ky = f.y.kinds[static_cast<std::size_t>(f.yKind(place))];
    if (f.x.tiles > 1 && !kx.periodic) {
        if (f.xKind(place) == 0)
            out.x1 = f.x.first;
        else
            out.x0 = f.x.end;
    }
    if (f.y.tiles > 1 && !ky.periodic) {
        if (f.yKind(place) == 0)
            out.y1 = f.y.first;
        else
            out.y0 = f.y.end;
    }
    for (const Spot p : points)
        out = {std::min(out.x0, p.x), std::min(out.y0, p.y), std::max(out.x1, p.x),
               std::max(out.y1, p.y)};
    return out;
}

} // namespace

std::vector<PointPattern> patternList(const Job& job, const Rules& rules,
                                      const GridLayout& layout) {
    const RepeatFrame& f = layout.frame;
    const bool blocks = job.top.grid.has_value();
    std::vector<PointPattern> out;
    // Shown where it lies inside the top, so that its angles are those of most
    // blocks.
    const int column = f.x.tiles > 2 ? 1 : 0, row = f.y.tiles > 2 ? 1 : 0;
    const Spot corner{f.x.first + column * f.x.tile, f.y.first + row * f.y.tile};
    // A top of one block has no sashing: what of the tile lies outside it is not there.
    const Field shown{corner.x, corner.y, std::min(corner.x + f.x.tile, rules.top().x1),
                      std::min(corner.y + f.y.tile, rules.top().y1)};
    Spots places;
    for (const Spot p : layout.repeat.tile.points)
        if (const Spot place = corner + p; place.x <= shown.x1 && place.y <= shown.y1)
            places.push_back(place);
    const std::string name =
        !blocks ? "rows"
        : f.across * f.down == 1
            ? (f.blocks.pitchX > f.blocks.blockX ? "block with sashing" : "block")
            : std::to_string(f.across) + " × " + std::to_string(f.down) + " blocks";
    out.push_back(drawn(job, rules, name, shown, f.x.tiles * f.y.tiles, places));
    for (int place = 0; place < f.count(); ++place) {
        const Spots& added = layout.repeat.added[static_cast<std::size_t>(place)];
        if (added.empty())
            continue;
        const std::string across = sideName(f.x, f.xKind(place), "left", "right");
        const std::string down = sideName(f.y, f.yKind(place), "head", "foot");
        const bool corner2 = !across.empty() && !down.empty();
        const std::string where = corner2 ? down + " " + across : down + across;
        const int times =
            (f.periodicX(place) ? f.x.tiles : 1) * (f.periodicY(place) ? f.y.tiles : 1);
        out.push_back(drawn(job, rules,
                            (corner2 ? "corner" : "border") + (where.empty() ? "" : ", " + where),
                            borderOf(f, place, added), times, added));
    }
    return out;
}

} // namespace bastewright::points
