#include "planners/passes/reach.h"

#include <gtest/gtest.h>

using namespace bastewright;

namespace {

constexpr Rect kTable{Length::inches(0), Length::inches(0), Length::inches(72), Length::inches(30)};

TEST(Reach, AnArmOfExactlyTheDepthReachesStraightAheadOnly) {
    const Rect box{30_in, 10_in, 42_in, 20_in};
    const auto sides = sidesFor(box, kTable, {Side::left, Side::right}, 20_in, true);
    ASSERT_EQ(sides.size(), 2U);
    // No leaning aside: the 24 in of edge must cover x = 30 to 42.
    EXPECT_EQ(sides[0].start.lo, 18_in);
    EXPECT_EQ(sides[0].start.hi, 30_in);
}

TEST(Reach, ThreeFourFive) {
    // Far corners 16 in deep; an arm of 20 in leans 12 in aside.
    const Rect box{40_in, 14_in, 60_in, 16_in};
    const auto sides = sidesFor(box, kTable, {Side::left, Side::right, Side::foot}, 20_in, true);
    ASSERT_EQ(sides.size(), 1U);
    EXPECT_EQ(sides[0].start.lo, 24_in);
    EXPECT_EQ(sides[0].start.hi, 48_in); // 52 would stand beyond the table's end
}

TEST(Reach, StandsInFrontOfTheZoneAndInsideTheSide) {
    const std::vector<Side> others{Side::left, Side::right, Side::foot};
    const Rect box{10_in, 4_in, 30_in, 14_in};
    EXPECT_EQ(leastReach(box, kTable, others), 14_in) << "centred at 8 to 32, straight ahead";
    const auto sides = sidesFor(box, kTable, others, 14_in, true);
    ASSERT_EQ(sides.size(), 1U);
    EXPECT_TRUE(sides[0].start.contains(8_in));
    const auto atEnd = sidesFor({{}, 4_in, 6_in, 14_in}, kTable, others, 14_in, true);
    ASSERT_EQ(atEnd.size(), 1U);
    EXPECT_EQ(atEnd[0].start.lo, 0_in);
    // 3-4-5: four deep, and three aside where the stretch is as wide as the person but for six.
    EXPECT_EQ(leastReach({10_in, 1_in, 40_in, 4_in}, kTable, others), 5_in);
}

TEST(Reach, ATableTennisTableHasAStripNobodyReaches) {
    // ITTF Laws of Table Tennis 2.1: 2.74 m by 1.525 m. With 0.625 m of reach from both long sides
    // a strip 0.275 m wide in the middle stays out of reach (docs: published values).
    const Rect table{{}, {}, 2740_mm, 1525_mm};
    const std::vector<Side> ends{Side::left, Side::right};
    const auto reached = [&](Length y) {
        return !sidesFor({1300_mm, y, 1301_mm, y}, table, ends, 625_mm, true).empty();
    };
    EXPECT_TRUE(reached(625_mm));
    EXPECT_FALSE(reached(626_mm));
    EXPECT_FALSE(reached(899_mm));
    EXPECT_TRUE(reached(900_mm));
}

TEST(Reach, TheLeastReachIsEnoughAndLessIsNot) {
    const Rect box{1_in, 3_in, 50_in, 14_in};
    const auto least = leastReach(box, kTable, {});
    ASSERT_TRUE(least);
    EXPECT_FALSE(sidesFor(box, kTable, {}, *least + 1_mm, true).empty());
    EXPECT_TRUE(sidesFor(box, kTable, {}, *least - 1_mm, true).empty());
    EXPECT_FALSE(leastReach(box, kTable, {kSides.begin(), kSides.end()}));
}

TEST(Reach, ShortSidesHoldOnePersonAcrossAllOfThem) {
    const Rect narrow{{}, {}, 72_in, 20_in};
    EXPECT_EQ(elbowRoom(narrow, Side::left), 20_in);
    EXPECT_EQ(elbowRoom(narrow, Side::head), 24_in);
}

TEST(Reach, OnTheFloorNothingIsOutOfReach) {
    const Rect box{10_in, 10_in, 100_in, 100_in}, floor{{}, {}, 120_in, 120_in};
    EXPECT_EQ(sidesFor(box, floor, {}, 27_in, false).size(), 4U);
}

} // namespace
