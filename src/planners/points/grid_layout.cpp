#include "planners/points/grid_layout.h"

#include "planners/points/remembered_tiles.h"

#include <algorithm>
#include <cmath>

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
    RepeatSearch::Estimate estimate;
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
    const Rect area = topRect(job.top);
    BlockFrame f;
    f.first = {((area.width() - g.width()) / 2 + g.border).in(),
               ((area.length() - g.length()) / 2 + g.border).in()};
    f.blockX = g.block.in();
    f.blockY = g.blockHeight().in();
    f.pitchX = f.blockX + g.sashing.in();
    f.pitchY = f.blockY + g.sashing.in();
    f.columns = g.columns;
    f.rows = g.rows;
    return f;
}

std::optional<GridLayout> gridLayout(const Rules& rules, const BlockFrame& blocks, int effort,
                                     PatternMemory* memory, std::stop_token stop) {
    TileRequest request;
    request.across = blocksInTile(blocks.pitchX, blocks.columns, rules.spacing);
    request.down = blocksInTile(blocks.pitchY, blocks.rows, rules.spacing);
    const RepeatFrame frame{rules.top(), blocks, request.across, request.down};
    request.column = frame.x.tiles > 2 ? request.across : 0;
    request.row = frame.y.tiles > 2 ? request.down : 0;

    request.quick = true;
    request.steps = 300;
    request.most = 1;
    const RepeatSearch search{rules, frame};
    std::optional<RepeatLayout> best;
    for (const TilePattern& tile : rememberedTiles(memory, rules, blocks, request, {}))
        best = search.complete(tile, 60, {});
    if (!best)
        return {};
    if (effort <= 0 || stop.stop_requested())
        return built(rules, frame, search, std::move(*best));

    request.quick = false;
    request.steps = 1500 * effort;
    request.most = 90 * effort;
    std::vector<Ranked> ranked;
    const auto add = [&](TilePattern&& tile) {
        const bool known = std::any_of(ranked.begin(), ranked.end(), [&](const Ranked& r) {
            return r.tile.points == tile.points;
        });
        if (known)
            return;
        if (const auto estimate = search.estimate(tile, 80))
            ranked.push_back({std::move(tile), *estimate});
        for (std::size_t i = ranked.size();
             i > 1 && ranked[i - 1].estimate < ranked[i - 2].estimate; --i)
            std::swap(ranked[i - 1], ranked[i - 2]);
    };
    for (TilePattern& tile : rememberedTiles(memory, rules, blocks, request, stop))
        if (!stop.stop_requested())
            add(std::move(tile));
    // The borders decide between patterns that are equal inside: the best of them
    // are varied further.
    Dice dice{1};
    const int tries = 20000 * effort;
    const std::size_t wanted = ranked.size() + static_cast<std::size_t>(70 * effort);
    for (int i = 0;
         i < tries && !ranked.empty() && ranked.size() < wanted && !stop.stop_requested(); ++i) {
        const std::size_t pick = dice.below(std::min<std::size_t>(ranked.size(), 6));
        if (ranked[pick].tile.room < rules.pin.clear())
            continue;
        if (auto next = varied(rules, blocks, request, ranked[pick].tile, dice))
            add(std::move(*next));
    }
    std::vector<RepeatLayout> finished{*best};
    for (const Ranked& r : ranked) {
        if (stop.stop_requested() || finished.size() > 4 * static_cast<std::size_t>(effort))
            break;
        if (auto layout = search.complete(r.tile, 1000 * effort, stop))
            finished.push_back(std::move(*layout));
    }
    const int fewest =
        std::min_element(finished.begin(), finished.end(), [](const auto& a, const auto& b) {
            return a.count < b.count;
        })->count;
    const auto plainest =
        std::min_element(finished.begin(), finished.end(), [&](const auto& a, const auto& b) {
            const auto rank = [&](const RepeatLayout& l) {
                return std::tuple{l.count > fewest + fewest / 200, -l.tile.symmetry,
                                  distances(l.tile), l.count};
            };
            return rank(a) < rank(b);
        });
    return built(rules, frame, search, std::move(*plainest));
}

} // namespace bastewright::points
