#include "planners/points/pattern_list.h"

#include "planners/points/line_clip.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::points {
namespace {

Length exact(double in) {
    return Length::nearestInches(in);
}

/// One direction of the top cut into the stretches of the tiles, border included.
class Cuts {
public:
    Cuts(const AxisKinds& axis, int blocks, int blocksInTile)
        : axis_{axis}
        , blocks_{blocks}
        , each_{blocksInTile} {}

    int count() const { return axis_.tiles; }
    double lo(int i) const {
        return i == 0 ? axis_.kinds.front().lo : axis_.first + i * axis_.tile;
    }
    double hi(int i) const { return i + 1 == count() ? axis_.kinds.back().hi : lo(i + 1) ; }
    int kind(int i) const { return axis_.kindOf(i); }
    int of(double v) const {
        const auto i = static_cast<int>(std::floor((v - axis_.first) / axis_.tile + 1e-7));
        return std::clamp(i, 0, count() - 1);
    }
    int blocksIn(int i) const { return std::min(each_, blocks_ - i * each_); }
    /// -1 for the first tile, 1 for the last, 0 inside and where there is but one.
    int side(int i) const {
        if (count() == 1 || (i > 0 && i + 1 < count()))
            return 0;
        return i == 0 ? -1 : 1;
    }

private:
    AxisKinds axis_;
    int blocks_, each_;
};

/// Tiles that lie alike on the top and have the same points.
struct Kind {
    std::pair<int, int> place; ///< kinds down and across
    std::vector<PlacedPoint> points;
    std::vector<std::pair<int, int>> tiles; ///< row and column of each, the first first
};

Sentence blocksOf(int across, int down, bool sashing) {
    if (across * down == 1)
        return sashing ? core::says("block with sashing") : core::says("block");
    return sashing ? core::says("%1 × %2 blocks with sashing", across, down)
                   : core::says("%1 × %2 blocks", across, down);
}

/// "block in the foot left corner": `sideX` and `sideY` as Cuts::side has them.
Sentence withPlace(Sentence tile, int sideX, int sideY) {
    if (sideX < 0)
        return sideY < 0   ? core::says("%1 in the head left corner", std::move(tile))
               : sideY > 0 ? core::says("%1 in the foot left corner", std::move(tile))
                           : core::says("%1 at the left side", std::move(tile));
    if (sideX > 0)
        return sideY < 0   ? core::says("%1 in the head right corner", std::move(tile))
               : sideY > 0 ? core::says("%1 in the foot right corner", std::move(tile))
                           : core::says("%1 at the right side", std::move(tile));
    return sideY < 0   ? core::says("%1 at the head", std::move(tile))
           : sideY > 0 ? core::says("%1 at the foot", std::move(tile))
                       : tile;
}

Sentence nameOf(const Job& job, const RepeatFrame& f, const Cuts& x, const Cuts& y,
                   const Kind& kind, bool differs) {
    const auto [row, column] = kind.tiles.front();
    const int across = x.blocksIn(column), down = y.blocksIn(row);
    const Sentence tile =
        job.top.grid ? blocksOf(across, down, f.blocks.pitchX > f.blocks.blockX) : core::says("rows");
    Sentence out = withPlace(tile, x.side(column), y.side(row));
    if (!differs)
        return out;
    return kind.tiles.size() > 1
               ? core::says("%1, another way: row %2, column %3 and others", std::move(out),
                            row + 1, column + 1)
               : core::says("%1, another way: row %2, column %3", std::move(out), row + 1,
                            column + 1);
}

PointPattern drawn(const Job& job, const Kind& kind, const Field& tile, Sentence name) {
    PointPattern out;
    out.name = std::move(name);
    out.tile = {exact(tile.x1) - exact(tile.x0), exact(tile.y1) - exact(tile.y0)};
    out.times = static_cast<int>(kind.tiles.size());
    out.points = kind.points;
    for (const Segment& s : seamsOf(job.top))
        if (const auto part =
                clipped({{s.from.x.in(), s.from.y.in()}, {s.to.x.in(), s.to.y.in()}}, tile))
            out.seams.push_back({{exact(part->from.x - tile.x0), exact(part->from.y - tile.y0)},
                                 {exact(part->to.x - tile.x0), exact(part->to.y - tile.y0)}});
    return out;
}

} // namespace

std::vector<PointPattern> patternList(const Job& job, const RepeatFrame& f,
                                      const std::vector<PlacedPoint>& points) {
    const Cuts x{f.x, f.blocks.columns, f.across}, y{f.y, f.blocks.rows, f.down};
    std::map<std::pair<int, int>, std::vector<PlacedPoint>> tiles;
    for (int row = 0; row < y.count(); ++row)
        for (int column = 0; column < x.count(); ++column)
            tiles[{row, column}] = {};
    for (const PlacedPoint& p : points) {
        const int column = x.of(p.at.x.in()), row = y.of(p.at.y.in());
        tiles[{row, column}].push_back(
            {{p.at.x - exact(x.lo(column)), p.at.y - exact(y.lo(row))}, p.angle});
    }
    std::vector<Kind> kinds;
    for (const auto& [at, own] : tiles) {
        const std::pair place{y.kind(at.first), x.kind(at.second)};
        const auto known =
            std::find_if(kinds.begin(), kinds.end(), [&place, &own = own](const Kind& k) {
                return k.place == place && k.points == own;
            });
        if (known == kinds.end())
            kinds.push_back({place, own, {at}});
        else
            known->tiles.push_back(at);
    }
    // Inside first, then the sides, then the corners; of one place the commonest first.
    const auto outside = [&](const Kind& k) {
        const auto edge = [](const AxisKinds& axis, int kind) {
            return axis.tiles > 1 && !axis.kinds[static_cast<std::size_t>(kind)].periodic;
        };
        return edge(f.y, k.place.first) + edge(f.x, k.place.second);
    };
    std::stable_sort(kinds.begin(), kinds.end(), [&](const Kind& a, const Kind& b) {
        return std::tuple{outside(a), a.place, -std::ssize(a.tiles)} <
               std::tuple{outside(b), b.place, -std::ssize(b.tiles)};
    });
    std::vector<PointPattern> out;
    for (const Kind& k : kinds) {
        const auto [row, column] = k.tiles.front();
        const bool differs = &k != &kinds.front() && (&k - 1)->place == k.place;
        const Field tile{x.lo(column), y.lo(row), x.hi(column), y.hi(row)};
        out.push_back(drawn(job, k, tile, nameOf(job, f, x, y, k, differs)));
    }
    return out;
}

} // namespace bastewright::points
