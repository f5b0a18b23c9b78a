#include "planners/points/grid_layout.h"

#include "planners/points/remembered_tiles.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace bastewright::points {
namespace {

/// Blocks smaller than three spacings share a pattern over several of them: a
/// single small block wastes what a part of a point would do.
int blocksInTile(double pitch, int blocks, double spacing) {
    const int wanted = std::max(1, static_cast<int>(std::floor(3 * spacing / pitch + 1e-9)));
    // Three tiles at least, so that there is an inside.
    return std::clamp(wanted, 1, std::max(1, blocks / 3));
}

struct Ranked {
    TilePattern tile;
    int estimate = 0;
};

GridLayout built(const Rules& rules, const RepeatFrame& frame, const RepeatSearch& search,
                 RepeatLayout repeat) {
    GridLayout out{search.laidOut(repeat), frame, std::move(repeat)};
    const std::size_t laid = out.layout.pins.size();
    out.regular = static_cast<int>(laid) == out.repeat.count;
    if (repair(out.layout, rules, 600)) {
        out.regular = false;
        prune(out.layout, rules);
    }
    return out;
}

} // namespace

std::optional<BlockFrame> frameOf(const Job& job) {
    if (!job.top.grid)
        return {};
    const BlockGrid& g = *job.top.grid;
    const Point first = g.firstBlock(topRect(job.top));
    BlockFrame f;
    f.first = {first.x.in(), first.y.in()};
    f.blockX = g.block.in();
    f.blockY = g.blockHeight().in();
    f.pitchX = f.blockX + g.sashing.in();
    f.pitchY = f.blockY + g.sashing.in();
    f.columns = g.columns;
    f.rows = g.rows;
    return f;
}

namespace {

/// Looks for the fewest points with one size of tile.
class Shape {
public:
    Shape(const Rules& rules, const BlockFrame& blocks, TileRequest request, PatternMemory* memory)
        : rules_{rules}
        , blocks_{blocks}
        , request_{request}
        , memory_{memory}
        , frame_{rules.top(), blocks, request.across, request.down}
        , search_{rules, frame_} {
        request_.column = frame_.x.tiles > 2 ? request.across : 0;
        request_.row = frame_.y.tiles > 2 ? request.down : 0;
    }

    std::optional<RepeatLayout> first() const {
        TileRequest quick = request_;
        quick.quick = true;
        quick.steps = 300;
        quick.most = 1;
        std::optional<RepeatLayout> out;
        for (const TilePattern& tile : rememberedTiles(memory_, rules_, blocks_, quick, {}))
            out = search_.complete(tile, 60, {});
        return out;
    }

    /// Looks for patterns of the tile with the fewest points.
    void find(int steps, int most, std::stop_token stop) {
        request_.steps = steps;
        request_.most = most;
        tiles_ = rememberedTiles(memory_, rules_, blocks_, request_, stop);
    }
    /// Their points on a block.
    double density() const {
        return tiles_.empty() ? 1e9
                              : static_cast<double>(tiles_.front().points.size()) /
                                    (request_.across * request_.down);
    }
    int points() const {
        return tiles_.empty() ? 0 : static_cast<int>(tiles_.front().points.size());
    }

    /// Those first that need least along the sides.
    void rank(std::stop_token stop) {
        for (TilePattern& tile : tiles_)
            if (!stop.stop_requested())
                add(std::move(tile));
    }

    /// The borders decide between patterns that are equal inside: the best of them are varied.
    void vary(int wanted, std::stop_token stop) {
        Dice dice{1};
        for (int i = 0; i < 300 * wanted && !ranked_.empty() && wanted > 0; ++i) {
            if (stop.stop_requested())
                return;
            const std::size_t pick = dice.below(std::min<std::size_t>(ranked_.size(), 6));
            if (ranked_[pick].tile.room < rules_.pin.clear())
                continue;
            if (auto next = varied(rules_, blocks_, request_, ranked_[pick].tile, dice)) {
                add(std::move(*next));
                --wanted;
            }
        }
    }

    int estimate() const {
        return ranked_.empty() ? std::numeric_limits<int>::max() : ranked_.front().estimate;
    }

    /// The best `most`, by a short search of many of them.
    std::vector<RepeatLayout> finished(std::size_t most, int steps, std::stop_token stop) {
        std::vector<std::pair<std::pair<bool, int>, const TilePattern*>> order;
        for (std::size_t i = 0; i < std::min(ranked_.size(), 3 * most); ++i)
            if (!stop.stop_requested())
                if (const auto layout = search_.adapted(ranked_[i].tile, steps / 6, stop))
                    order.emplace_back(std::pair{!layout->complete(), layout->count},
                                       &ranked_[i].tile);
        std::stable_sort(order.begin(), order.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        std::vector<RepeatLayout> out;
        for (const auto& [rank, tile] : order) {
            if (stop.stop_requested() || out.size() >= most)
                break;
            if (auto layout = search_.adapted(*tile, steps, stop))
                out.push_back(std::move(*layout));
        }
        return out;
    }

    const RepeatFrame& frame() const { return frame_; }
    const RepeatSearch& search() const { return search_; }

private:
    void add(TilePattern&& tile) {
        const bool known = std::any_of(ranked_.begin(), ranked_.end(), [&](const Ranked& r) {
            return r.tile.points == tile.points;
        });
        if (known)
            return;
        constexpr std::size_t kKept = 6;
        const int most =
            ranked_.size() < kKept ? std::numeric_limits<int>::max() : ranked_[kKept - 1].estimate;
        if (const auto estimate = search_.estimate(tile, 80, most))
            ranked_.push_back({std::move(tile), *estimate});
        for (std::size_t i = ranked_.size();
             i > 1 && ranked_[i - 1].estimate <= ranked_[i - 2].estimate; --i)
            std::swap(ranked_[i - 1], ranked_[i - 2]);
    }

    const Rules& rules_;
    const BlockFrame& blocks_;
    TileRequest request_;
    PatternMemory* memory_;
    RepeatFrame frame_;
    RepeatSearch search_;
    std::vector<TilePattern> tiles_;
    std::vector<Ranked> ranked_;
};

/// Two blocks often do with one point fewer than twice one. Three tiles, for an inside.
std::vector<TileRequest> pairRequests(const BlockFrame& blocks, const TileRequest& single) {
    std::vector<TileRequest> out;
    if (single.across * single.down > 1)
        return out;
    if (blocks.columns > 4)
        out.push_back({.across = 2, .down = 1, .pair = true});
    if (blocks.rows > 4)
        out.push_back({.across = 1, .down = 2, .pair = true});
    return out;
}

} // namespace

std::optional<GridLayout> gridLayout(const Rules& rules, const BlockFrame& blocks, int effort,
                                     PatternMemory* memory, std::stop_token stop) {
    TileRequest single;
    single.across = blocksInTile(blocks.pitchX, blocks.columns, rules.spacing);
    single.down = blocksInTile(blocks.pitchY, blocks.rows, rules.spacing);
    Shape plain{rules, blocks, single, memory};
    const auto first = plain.first();
    if (!first)
        return {};
    if (effort <= 0 || stop.stop_requested())
        return built(rules, plain.frame(), plain.search(), *first);

    plain.find(1500 * effort, 40 * effort, stop);
    std::vector<std::unique_ptr<Shape>> pairs;
    double least = plain.density();
    for (TileRequest request : pairRequests(blocks, single)) {
        if (plain.points() > 0)
            request.below = 2 * plain.points();
        pairs.push_back(std::make_unique<Shape>(rules, blocks, request, memory));
        pairs.back()->find(4000 * effort, 24 * effort, stop);
        least = std::min(least, pairs.back()->density());
    }
    // A size of tile that needs more points inside than another does not make up for it outside; of
    // two alike the single block is the plainer.
    std::vector<Shape*> shapes;
    if (plain.density() <= 1.01 * least)
        shapes.push_back(&plain);
    for (const auto& pair : pairs)
        if (pair->density() <= 1.01 * least && pair->density() < plain.density())
            shapes.push_back(pair.get());
    struct Finished {
        const Shape* shape;
        RepeatLayout layout;
    };
    std::vector<Finished> finished{{&plain, *first}};
    int fewestYet = std::numeric_limits<int>::max();
    for (Shape* shape : shapes) {
        shape->rank(stop);
        fewestYet = std::min(fewestYet, shape->estimate());
    }
    std::erase_if(shapes, [&](Shape* s) { return s->estimate() > fewestYet; });
    for (Shape* shape : shapes) {
        shape->vary((shape == &plain ? 40 : 10) * effort, stop);
        // What a pair repeats is twice as much to search: one of them to the end for two of the
        // others.
        const int most = (shape == &plain ? 2 : 1) * effort;
        for (RepeatLayout& layout :
             shape->finished(static_cast<std::size_t>(most), 2400 * effort, stop))
            finished.push_back({shape, std::move(layout)});
    }
    if (std::any_of(finished.begin(), finished.end(),
                    [](const Finished& f) { return f.layout.complete(); }))
        std::erase_if(finished, [](const Finished& f) { return !f.layout.complete(); });
    const int fewest = std::min_element(finished.begin(), finished.end(), [](auto& a, auto& b) {
                           return a.layout.count < b.layout.count;
                       })->layout.count;
    const auto plainest =
        std::min_element(finished.begin(), finished.end(), [&](const auto& a, const auto& b) {
            const auto rank = [&](const Finished& f) {
                // A pattern of one block is worth a fiftieth of the points.
                const int blocksIn = f.layout.tile.across * f.layout.tile.down;
                const int allowed = fewest + fewest / (blocksIn > 1 ? 200 : 50);
                return std::tuple{f.layout.count > allowed, blocksIn, -f.layout.tile.symmetry,
                                  distances(f.layout.tile), f.layout.count};
            };
            return rank(a) < rank(b);
        });
    return built(rules, plainest->shape->frame(), plainest->shape->search(),
                 std::move(plainest->layout));
}

} // namespace bastewright::points
