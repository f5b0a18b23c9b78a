#include "planners/surface/closed_sides.h"
#include "planners/surface/reachable.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;
using testing::ElementsAre;

constexpr Rect kTable{{}, {}, 72_in, 60_in};

Helper reaching(Length reach, bool seated = false) {
    Helper h;
    h.reach = reach;
    h.seated = seated;
    return h;
}

// Over a table of 59 1/4 in one just gets to the middle by leaning (common practice: 24 in without
// leaning, 27 standing close). Functional reach adds 10.5-16.7 in to an arm's length at shoulder
// height (Duncan and others, J. Gerontol. 45, 1990; from memory): far more than the 4 in we take.
TEST(Reach, TheMiddleOfAWideTableIsJustReachedByLeaning) {
    const Rect table{{}, {}, 96_in, 59.25_in};
    const Point middle{48_in, Length::inch64ths(59 * 32 + 8)};
    EXPECT_EQ(reachOf(reaching(27_in), middle, table, std::vector<Side>{}), ReachKind::leaning);
    EXPECT_EQ(reachOf(reaching(30_in), middle, table, std::vector<Side>{}), ReachKind::easy);
    EXPECT_EQ(reachOf(reaching(25_in), middle, table, std::vector<Side>{}), std::nullopt);
}

TEST(Reach, WhoSitsDoesNotLean) {
    EXPECT_EQ(leaningReach(reaching(25_in)), 29_in);
    EXPECT_EQ(leaningReach(reaching(25_in, true)), 25_in);
}

TEST(Reach, IsFromAnyOpenSide) {
    const Helper h = reaching(27_in);
    const Point place{10_in, 30_in};
    EXPECT_EQ(reachOf(h, place, kTable, std::vector<Side>{}), ReachKind::easy);
    EXPECT_EQ(reachOf(h, place, kTable, std::vector{Side::left}), ReachKind::leaning);
    EXPECT_EQ(reachOf(h, place, kTable, std::vector{Side::left, Side::head, Side::foot}),
              std::nullopt);
}

TEST(Reach, IsACircleRoundTheStretch) {
    const Helper h = reaching(25_in, true);
    // 12 in deep a seated person of 25 in covers 2 · √(25² − 12²) = 43.9 in of edge from one spot.
    EXPECT_TRUE(reachFrom(h, {21_in, 12_in}, kTable, Side::head, {{}, {}}));
    EXPECT_FALSE(reachFrom(h, {22_in, 12_in}, kTable, Side::head, {{}, {}}));
    EXPECT_TRUE(reachFrom(h, {22_in, 12_in}, kTable, Side::head, {{}, 10_in}));
}

TEST(Reach, OfWhoKeepsToOneSide) {
    SurfacePlan surface;
    surface.quiltLengthAlongLength = false;
    Helper h = reaching(27_in);
    h.side = Side::foot;
    EXPECT_TRUE(reachOf(h, {36_in, 50_in}, kTable, surface));
    EXPECT_FALSE(reachOf(h, {36_in, 10_in}, kTable, surface));
    surface.floor = true;
    EXPECT_EQ(reachOf(h, {36_in, 10_in}, kTable, surface), ReachKind::easy);
}

// Nobody with a short reach shrinks the field for the others.
TEST(Reach, TheFarthestOfThoseWhoWorkCounts) {
    std::vector<Helper> helpers{reaching(24_in), reaching(30_in), reaching(34_in)};
    helpers[2].closes = false;
    EXPECT_EQ(farthestReach(helpers, Basting::With::pins), 34_in);
    EXPECT_EQ(farthestReach(helpers, Basting::With::dots), 38_in);
    EXPECT_EQ(farthestReach({}, Basting::With::pins), 31_in) << "27 and 4 in: common practice";
}

// A table-tennis table is 2.74 m × 1.525 m (ITTF Laws of Table Tennis 2.1). With a reach of 0.625 m
// (forward reach, women, 5th percentile: DIN 33402-2:2005) from all sides a strip 0.275 m wide
// along its middle is out of reach: narrow enough to be pulled across.
TEST(OutOfReach, MiddleOfATableTennisTable) {
    const Rect table{{}, {}, 274_cm, Length::millimetres(1525)};
    const Rect middle = outOfReach(table, {}, Length::millimetres(625));
    EXPECT_EQ(middle.length(), Length::millimetres(275));
    EXPECT_LE(middle.length(), kPulledAcross);
}

TEST(OutOfReach, NothingOfAnOrdinaryTableAndAllBetweenFourWalls) {
    const Rect table{{}, {}, 72_in, 30_in};
    EXPECT_TRUE(outOfReach(table, {}, 27_in).empty());
    EXPECT_EQ(outOfReach(table, {kSides.begin(), kSides.end()}, 27_in), table);
    EXPECT_EQ(outOfReach(table, {Side::head}, 27_in), (Rect{27_in, {}, 45_in, 3_in}));
}

// The quilt's head points to the drawn left when its length lies along the table.
TEST(ClosedSides, TurnWithTheQuilt) {
    const auto turned = [](Side drawn) { return closedSides(std::vector{drawn}, true); };
    EXPECT_THAT(turned(Side::left), ElementsAre(Side::head));
    EXPECT_THAT(turned(Side::foot), ElementsAre(Side::left));
    EXPECT_THAT(turned(Side::right), ElementsAre(Side::foot));
    EXPECT_THAT(turned(Side::head), ElementsAre(Side::right));
    EXPECT_THAT(closedSides(std::vector{Side::foot}, false), ElementsAre(Side::foot));
}

} // namespace
} // namespace bastewright
