#include "planners/passes/reach.h"
#include "planners/passes/zones.h"

#include <gtest/gtest.h>

#include <set>

namespace bastewright {
namespace {

using namespace literals;

/// Two passes side by side on a table 40 in deep.
ZoneInput twoPasses() {
    ZoneInput in;
    in.top = {60_in, 36_in};
    Pass first, second;
    first.number = 1;
    first.fresh = Rect{{}, {}, 34_in, 36_in};
    first.table = {-2_in, -2_in, 42_in, 38_in};
    second.number = 2;
    second.fresh = Rect{34_in, {}, 60_in, 36_in};
    second.table = {18_in, -2_in, 62_in, 38_in};
    in.passes = {first, second};
    in.reach = 27_in;
    return in;
}

std::vector<PlacedPoint> everyFour(Size top) {
    std::vector<PlacedPoint> out;
    for (Length y = 2_in; y < top.length; y += 4_in)
        for (Length x = 2_in; x < top.width; x += 4_in)
            out.push_back({{x, y}, 0});
    return out;
}

TEST(ColumnLetters, GoOnAfterZ) {
    EXPECT_EQ(columnLetters(0), "A");
    EXPECT_EQ(columnLetters(25), "Z");
    EXPECT_EQ(columnLetters(26), "AA");
    EXPECT_EQ(columnLetters(51), "AZ");
    EXPECT_EQ(columnLetters(52), "BA");
}

TEST(Zones, PartitionTheTopAndKeepToOnePass) {
    const ZoneInput in = twoPasses();
    double area = 0;
    std::set<std::string> ids;
    for (const Zone& z : cutZones(in, {})) {
        area += areaSquareInches(z.area);
        EXPECT_TRUE(ids.insert(z.id).second);
        EXPECT_LE(z.area.width(), in.reach);
        EXPECT_LE(z.area.length(), in.reach);
        ASSERT_GE(z.pass, 1);
        EXPECT_TRUE(contains(in.passes[std::size_t(z.pass - 1)].fresh, z.area));
    }
    EXPECT_NEAR(area, 60.0 * 36.0, 1e-9);
}

TEST(Zones, HoldEveryPointOnce) {
    const ZoneInput in = twoPasses();
    const auto points = everyFour(in.top);
    std::multiset<Point> given;
    for (const Zone& z : cutZones(in, points))
        for (const PlacedPoint& p : z.points)
            given.insert(p.at);
    EXPECT_EQ(given.size(), points.size());
    for (const PlacedPoint& p : points)
        EXPECT_EQ(given.count(p.at), 1u);
}

// What lies in an area is basted with it.
TEST(Zones, HoldThePointsThatLieInThem) {
    const ZoneInput in = twoPasses();
    for (const Zone& z : cutZones(in, everyFour(in.top)))
        for (const PlacedPoint& p : z.points)
            EXPECT_TRUE(z.area.contains(p.at));
}

TEST(Zones, KeepToAnAreaOfSeveralRectangles) {
    ZoneInput in = twoPasses();
    in.passes[0].fresh = Rect{{}, {}, 34_in, 20_in};
    in.passes[1].fresh = without(Rect{{}, {}, 60_in, 36_in}, Rect{{}, {}, 34_in, 20_in});
    in.passes[1].table = {-2_in, -2_in, 62_in, 38_in};
    double area = 0;
    for (const Zone& z : cutZones(in, everyFour(in.top))) {
        area += areaSquareInches(z.area);
        EXPECT_TRUE(contains(in.passes[std::size_t(z.pass - 1)].fresh, z.area));
    }
    EXPECT_NEAR(area, 60.0 * 36.0, 1e-9);
}

TEST(Zones, AreAllWithinReachOfAnOpenSide) {
    ZoneInput in = twoPasses();
    in.closed = {Side::left, Side::right};
    for (const Zone& z : cutZones(in, everyFour(in.top))) {
        const Rect& table = in.passes[std::size_t(z.pass - 1)].table;
        const Rect box = workBox(z);
        const auto nearest = leastReach(box, table, in.closed);
        ASSERT_TRUE(nearest);
        EXPECT_LE(*nearest, 27_in) << z.id;
    }
}

TEST(Zones, PreferSeams) {
    ZoneInput in = twoPasses();
    in.seamsY = {17_in, 19_in};
    std::set<Length> lines;
    for (const Zone& z : cutZones(in, {}))
        lines.insert(z.area.y1);
    EXPECT_TRUE(lines.contains(17_in) || lines.contains(19_in));
}

} // namespace
} // namespace bastewright
