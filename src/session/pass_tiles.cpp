#include "session/pass_tiles.h"

#include <algorithm>
#include <numeric>

namespace bastewright {
namespace {

/// How many zones lie one behind the other before each, along one axis: whatever lies before
/// another on the table comes before it on the board, and no line of the board is left empty
/// because zones beside each other begin at different places.
std::vector<int> linesOf(const std::vector<const Zone*>& zones, Length Rect::*from,
                         Length Rect::*to) {
    std::vector<std::size_t> order(zones.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t i) { return zones[i]->area.*from; });
    std::vector<int> line(zones.size(), 0);
    for (const std::size_t i : order)
        for (const std::size_t before : order)
            if (zones[before]->area.*to <= zones[i]->area.*from)
                line[i] = std::max(line[i], line[before] + 1);
    return line;
}

int countOf(const std::vector<int>& lines) {
    return lines.empty() ? 1 : *std::ranges::max_element(lines) + 1;
}

} // namespace

PassTiles tilesOf(const QuiltPlan& quilt, int pass, int quarters) {
    PassTiles out;
    // A quilt that lies along the table has its head at the left there.
    const int turn = (((quarters + (quilt.surface.quiltLengthAlongLength ? 3 : 0)) % 4) + 4) % 4;
    constexpr std::array kRound{Side::head, Side::right, Side::foot, Side::left};
    for (std::size_t place = 0; place < 4; ++place)
        out.around[place] = kRound[(place + 4 - static_cast<std::size_t>(turn)) % 4];
    std::vector<const Zone*> zones;
    for (const Zone& zone : quilt.zones)
        if (zone.pass == pass)
            zones.push_back(&zone);
    const auto xs = linesOf(zones, &Rect::x0, &Rect::x1), ys = linesOf(zones, &Rect::y0, &Rect::y1);
    const int across = countOf(xs), down = countOf(ys);
    out.columns = turn % 2 == 0 ? across : down;
    out.rows = turn % 2 == 0 ? down : across;
    for (std::size_t i = 0; i < zones.size(); ++i) {
        const int c = xs[i], r = ys[i];
        PassTiles::Tile tile{zones[i], c, r};
        if (turn == 1)
            tile = {zones[i], down - 1 - r, c};
        else if (turn == 2)
            tile = {zones[i], across - 1 - c, down - 1 - r};
        else if (turn == 3)
            tile = {zones[i], r, across - 1 - c};
        out.tiles.push_back(tile);
    }
    return out;
}

} // namespace bastewright
