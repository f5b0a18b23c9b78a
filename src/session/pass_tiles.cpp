#include "session/pass_tiles.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace bastewright {
namespace {

int indexOf(const std::set<Length>& lines, Length at) {
    return static_cast<int>(std::distance(lines.begin(), lines.find(at)));
}

} // namespace

PassTiles tilesOf(const QuiltPlan& quilt, int pass, int quarters) {
    PassTiles out;
    // A quilt that lies along the table has its head at the left there.
    const int turn = (((quarters + (quilt.surface.quiltLengthAlongLength ? 3 : 0)) % 4) + 4) % 4;
    constexpr std::array kRound{Side::head, Side::right, Side::foot, Side::left};
    for (std::size_t place = 0; place < 4; ++place)
        out.around[place] = kRound[(place + 4 - static_cast<std::size_t>(turn)) % 4];
    std::set<Length> xs, ys;
    for (const auto& zone : quilt.zones)
        if (zone.pass == pass) {
            xs.insert(zone.area.x0);
            ys.insert(zone.area.y0);
        }
    const int across = static_cast<int>(xs.size()), down = static_cast<int>(ys.size());
    out.columns = std::max(1, turn % 2 == 0 ? across : down);
    out.rows = std::max(1, turn % 2 == 0 ? down : across);
    for (const auto& zone : quilt.zones) {
        if (zone.pass != pass)
            continue;
        const int c = indexOf(xs, zone.area.x0), r = indexOf(ys, zone.area.y0);
        PassTiles::Tile tile{&zone, c, r};
        if (turn == 1)
            tile = {&zone, down - 1 - r, c};
        else if (turn == 2)
            tile = {&zone, across - 1 - c, down - 1 - r};
        else if (turn == 3)
            tile = {&zone, r, across - 1 - c};
        out.tiles.push_back(tile);
    }
    return out;
}

} // namespace bastewright
