#include "planners/whole/whole.h"
#include "session/pass_tiles.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace bastewright {
namespace {

Zone zoneAt(std::string id, Rect area) {
    Zone zone;
    zone.id = std::move(id);
    zone.pass = 1;
    zone.area = area;
    return zone;
}

/// "column row" of every zone.
std::map<std::string, std::pair<int, int>> cells(const PassTiles& tiles) {
    std::map<std::string, std::pair<int, int>> out;
    for (const auto& tile : tiles.tiles)
        out[tile.zone->id] = {tile.column, tile.row};
    return out;
}

// Head at the top; zones at the left begin at other places than those at the right.
TEST(PassTiles, LeaveNoLineEmptyWhereZonesBesideEachOtherBeginApart) {
    QuiltPlan quilt;
    quilt.zones = {
        zoneAt("a", {0_in, 0_in, 13_in, 20_in}), zoneAt("b", {0_in, 20_in, 13_in, 40_in}),
        zoneAt("c", {13_in, 0_in, 26_in, 25_in}), zoneAt("d", {13_in, 25_in, 26_in, 40_in}),
        zoneAt("e", {0_in, 40_in, 26_in, 60_in})};
    quilt.surface.quiltLengthAlongLength = false;
    const PassTiles tiles = tilesOf(quilt, 1, 0);
    EXPECT_EQ(tiles.columns, 2);
    EXPECT_EQ(tiles.rows, 3);
    const std::map<std::string, std::pair<int, int>> expected{
        {"a", {0, 0}}, {"b", {0, 1}}, {"c", {1, 0}}, {"d", {1, 1}}, {"e", {0, 2}}};
    EXPECT_EQ(cells(tiles), expected);
    // Turned by a half the last are the first.
    const std::map<std::string, std::pair<int, int>> turned{
        {"a", {1, 2}}, {"b", {1, 1}}, {"c", {0, 2}}, {"d", {0, 1}}, {"e", {1, 0}}};
    EXPECT_EQ(cells(tilesOf(quilt, 1, 2)), turned);
}

void expectAsOnTheTable(const QuiltPlan& quilt) {
    EXPECT_FALSE(quilt.passes.empty());
    for (const Pass& pass : quilt.passes) {
        SCOPED_TRACE("pass " + std::to_string(pass.number));
        const PassTiles tiles =
            tilesOf(quilt, pass.number, quilt.surface.quiltLengthAlongLength ? 1 : 0);
        EXPECT_EQ(std::ssize(tiles.tiles),
                  std::ranges::count(quilt.zones, pass.number, &Zone::pass));
        std::set<std::pair<int, int>> taken;
        for (const auto& one : tiles.tiles) {
            EXPECT_TRUE(taken.insert({one.column, one.row}).second) << one.zone->id;
            EXPECT_LT(one.column, tiles.columns);
            EXPECT_LT(one.row, tiles.rows);
            for (const auto& other : tiles.tiles) {
                if (one.zone->area.x1 <= other.zone->area.x0) {
                    EXPECT_LT(one.column, other.column);
                }
                if (one.zone->area.y1 <= other.zone->area.y0) {
                    EXPECT_LT(one.row, other.row);
                }
            }
        }
    }
}

// What lies before another on the table comes before it on the board, and no two share a cell.
TEST(PassTiles, LieAsZonesLieInPlans) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE(seed);
        auto afternoon = made::anyAfternoon(seed);
        made::plan(afternoon);
        std::ranges::for_each(afternoon.quilts, expectAsOnTheTable);
    }
    Session session;
    session.jobs.emplace_back().top.width = {88_in};
    session.jobs.front().top.length = {112_in};
    session.jobs.front().basting.with = Basting::With::thread;
    session.setting.room.tables = {Table{.length = 72_in, .width = 30_in, .count = 2}};
    session.setting.helpers = made::helpers(4);
    const Plan sewn = planWhole(session);
    ASSERT_EQ(sewn.quilts.size(), 1U);
    expectAsOnTheTable(sewn.quilts.front());
}

} // namespace
} // namespace bastewright
