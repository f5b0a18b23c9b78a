#include "planners/points/block_layout.h"

#include "planners/points/block_figure.h"
#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace bastewright::points {
namespace {

class Builder {
public:
    Builder(const Job& job, const Rules& rules, const BlockCell& cell, BlockFigure figure)
        : rules_{rules}
        , cell_{cell}
        , figure_{std::move(figure)} {
        out_.blocks.block = job.top.grid->block;
        out_.blocks.perStrip = figure_.perStrip;
        out_.blocks.posts = figure_.post;
    }

    std::optional<BlockLayout> build(const std::stop_token& stop) {
        for (const Spot o : figure_.orbits)
            for (const Spot s : imagesOf(o))
                out_.blocks.inBlock.push_back(exact(Spot{cell_.block / 2, cell_.block / 2} + s));
        std::ranges::sort(out_.blocks.inBlock, {}, [](Point p) { return std::pair{p.y, p.x}; });
        placeBlocks();
        for (const Side side : kSides)
            placeEdge(side);
        repair(out_.layout, rules_, 300, stop);
        if (stop.stop_requested())
            return {};
        prune(out_.layout, rules_);
        // Pins of the lines near a corner may have moved.
        std::set<Point> ofLines, left;
        for (const Layout::Pin& p : out_.layout.pins)
            left.insert(exact(p.at));
        for (EdgeLine& line : out_.blocks.edges) {
            const auto placeOf = [&](Length along) {
                return exact(at(line.side, line.in.in(), along.in()));
            };
            std::erase_if(line.places,
                          [&](Length along) { return !left.contains(placeOf(along)); });
            for (const Length along : line.places)
                ofLines.insert(placeOf(along));
        }
        std::erase_if(out_.blocks.edges, [](const EdgeLine& l) { return l.places.empty(); });
        for (const Layout::Pin& p : out_.layout.pins)
            if (p.loose && !ofLines.contains(exact(p.at)))
                out_.blocks.singles.push_back(exact(p.at));
        std::ranges::sort(out_.blocks.singles);
        std::ranges::sort(out_.blocks.leftOut);
        return std::move(out_);
    }

private:
    void put(Spot at) {
        if (rules_.pin.angleAt(at))
            out_.layout.pins.push_back({at, false});
        else
            out_.blocks.leftOut.push_back(exact(at));
    }
    void placeBlocks() {
        BlockFigure inside = figure_, sashing = figure_;
        inside.perStrip = 0;
        inside.post = false;
        const Spots block = pointsOf(inside, cell_);
        const double beside = cell_.pitch() / 2;
        for (int row = 0; row < cell_.rows; ++row)
            for (int column = 0; column < cell_.columns; ++column) {
                const Spot middle = cell_.middle(column, row);
                const bool right = column + 1 < cell_.columns, below = row + 1 < cell_.rows;
                for (const Spot s : block)
                    put(middle + s);
                for (int i = 0; i < figure_.perStrip; ++i) {
                    const double along = cell_.block * ((i + 0.5) / figure_.perStrip - 0.5);
                    if (right)
                        put(middle + Spot{beside, along});
                    if (below)
                        put(middle + Spot{along, beside});
                }
                if (figure_.post && right && below)
                    put(middle + Spot{beside, beside});
            }
    }

    /// A place so far in from a side and so far along it.
    Spot at(Side side, double in, double along) const {
        const Field& t = rules_.top();
        switch (side) {
        case Side::head:
            return {along, t.y0 + in};
        case Side::foot:
            return {along, t.y1 - in};
        case Side::left:
            return {t.x0 + in, along};
        case Side::right:
            break;
        }
        return {t.x1 - in, along};
    }
    /// The strip of the top beside a side, over the middle block.
    Field strip(Side side, double deep) const {
        const Field& t = rules_.top();
        const Spot m = cell_.middle(cell_.columns / 2, cell_.rows / 2);
        const double half = cell_.pitch() / 2;
        switch (side) {
        case Side::head:
            return {m.x - half, t.y0, m.x + half, t.y0 + deep};
        case Side::foot:
            return {m.x - half, t.y1 - deep, m.x + half, t.y1};
        case Side::left:
            return {t.x0, m.y - half, t.x0 + deep, m.y + half};
        case Side::right:
            break;
        }
        return {t.x1 - deep, m.y - half, t.x1, m.y + half};
    }
    /// Places along a side: so many to a block's pitch, from the middles of the blocks on or
    /// between them.
    std::vector<double> placesAlong(Side side, int perBlock, bool between) const {
        const bool across = isAcross(side);
        const Spot first = cell_.middle(0, 0);
        const double step = cell_.pitch() / perBlock,
                     length = across ? rules_.top().width() : rules_.top().length();
        const double inset = rules_.pin.edge() + rules_.pin.halfLength();
        double from = (across ? first.x : first.y) + (between ? step / 2 : 0);
        from -= std::floor((from - inset) / step) * step;
        std::vector<double> out;
        for (double a = from; a <= length - inset + 1e-9; a += step)
            out.push_back(a);
        return out;
    }
    /// The line with the fewest points that closes the strip beside a side; none where it is
    /// closed.
    void placeEdge(Side side) {
        const Field part = strip(side, rules_.radius + rules_.spacing);
        if (covered(out_.layout.spots(), part, rules_.radius))
            return;
        const double farthest = rules_.radius;
        for (int perBlock = 1; perBlock * rules_.gap <= cell_.pitch(); ++perBlock) {
            std::optional<std::pair<double, bool>> best;
            double most = -1;
            for (double in = std::ceil(rules_.pin.edge() / rules_.fine) * rules_.fine;
                 in <= farthest; in += 2 * rules_.fine)
                for (const bool between : {false, true})
                    if (const double s =
                            slackWith(side, in, placesAlong(side, perBlock, between), part);
                        s > most) {
                        most = s;
                        best = {in, between};
                    }
            if (!best)
                continue;
            EdgeLine line{side, Length::nearestInches(best->first), {}};
            for (const double along : placesAlong(side, perBlock, best->second)) {
                if (tooNear(at(side, best->first, along)))
                    continue; // a corner that the other side has
                const Spot spot = at(side, best->first, along);
                if (!rules_.pin.angleAt(spot))
                    continue;
                line.places.push_back(Length::nearestInches(along));
                out_.layout.pins.push_back({spot, nearCorner(spot)});
            }
            out_.blocks.edges.push_back(std::move(line));
            return;
        }
    }
    bool nearCorner(Spot s) const {
        const Field& t = rules_.top();
        const double far = 1.75 * rules_.spacing;
        return std::min(s.x - t.x0, t.x1 - s.x) < far && std::min(s.y - t.y0, t.y1 - s.y) < far;
    }
    bool tooNear(Spot s) const {
        return std::ranges::any_of(out_.layout.pins, [&](const Layout::Pin& p) {
            return distanceSquared(p.at, s) < squared(rules_.gap - 1e-7);
        });
    }
    /// Negative where the line is not allowed or leaves the strip bare.
    double slackWith(Side side, double in, const std::vector<double>& places,
                     const Field& part) const {
        Spots near;
        const Field around = part.grown(2 * rules_.radius);
        for (const Layout::Pin& p : out_.layout.pins)
            if (around.contains(p.at))
                near.push_back(p.at);
        const std::size_t own = near.size();
        for (const double along : places) {
            const Spot s = at(side, in, along);
            if (!around.contains(s))
                continue;
            if (!rules_.pin.angleAt(s) ||
                std::any_of(near.begin(), near.begin() + std::ptrdiff_t(own), [&](Spot q) {
                    return distanceSquared(q, s) < squared(rules_.gap - 1e-7);
                }))
                return -1;
            near.push_back(s);
        }
        return covered(near, part, rules_.radius) ? rules_.radius - coveringRadius(near, part) : -1;
    }

    const Rules& rules_;
    const BlockCell& cell_;
    BlockFigure figure_;
    BlockLayout out_;
};

} // namespace

std::optional<BlockLayout> blockLayout(const Job& job, const Rules& rules, std::size_t most,
                                       std::stop_token stop) {
    const auto cell = blockCellOf(job);
    if (!cell)
        return {};
    // What the blocks themselves take must leave something for the borders.
    const double blocks = double(cell->columns) * cell->rows;
    const auto figure =
        leastFigure(rules, *cell, int(std::min(1e6, double(most) / blocks * 1.3)) + 1);
    if (!figure)
        return {};
    auto out = Builder{job, rules, *cell, *figure}.build(stop);
    if (!out || out->layout.pins.size() >= most)
        return {};
    return out;
}

} // namespace bastewright::points
