#include "planners/surface/workable.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;
using testing::ElementsAre;
using testing::IsEmpty;

Arrangement oneTable(Length length, Length width) {
    return {.name = "1 table",
            .length = length,
            .width = width,
            .tables = {{{}, {}, length, width}},
            .used = {1}};
}

TEST(Workable, AnOrdinaryTableIsWorkedAllOverInsideItsRim) {
    const Workable w = workable(oneTable(72_in, 30_in), {}, false, 27_in);
    EXPECT_TRUE(w.whole);
    EXPECT_EQ(w.field, (Rect{2_in, 2_in, 70_in, 28_in}));
    EXPECT_THAT(w.closed, IsEmpty());
}

TEST(Workable, TurnsWithTheQuilt) {
    const Workable w = workable(oneTable(72_in, 30_in), {}, true, 27_in);
    EXPECT_EQ(w.table, (Size{30_in, 72_in}));
    EXPECT_EQ(w.field, (Rect{2_in, 2_in, 28_in, 70_in}));
}

// A table-tennis table is 2.74 m × 1.525 m (ITTF Laws of Table Tennis 2.1). With a reach of 0.625 m
// (forward reach, women, 5th percentile: DIN 33402-2:2005) from both long sides, a strip 0.275 m
// wide along its middle is out of reach.
TEST(Workable, MiddleOfATableTennisTableIsOutOfReach) {
    const Length length = 274_cm, width = Length::millimetres(1525),
                 reach = Length::millimetres(625);
    EXPECT_EQ(width - 2 * reach, Length::millimetres(275));
    const Workable w = workable(oneTable(length, width), {}, false, reach);
    EXPECT_FALSE(w.whole);
    EXPECT_EQ(w.field.length(), reach - 2_in) << "only a strip along one side is planned";
    EXPECT_EQ(w.field.width(), length - 4_in);
}

TEST(Workable, AWallLeavesTheDepthOfOneReach) {
    Room room;
    room.walls = {Side::head};
    const Workable w = workable(oneTable(72_in, 30_in), room, false, 27_in);
    EXPECT_FALSE(w.whole);
    EXPECT_EQ(w.field, (Rect{2_in, 3_in, 70_in, 28_in})) << "within 27 in of the foot side";
    EXPECT_THAT(w.closed, ElementsAre(Side::head));
}

TEST(Workable, ShortSidesCanServeASmallTableBetweenWalls) {
    Room room;
    room.walls = {Side::head, Side::foot};
    const Workable w = workable(oneTable(48_in, 30_in), room, false, 27_in);
    EXPECT_TRUE(w.whole);
}

TEST(Workable, NothingIsWorkableBetweenFourWalls) {
    Room room;
    room.walls = {Side::head, Side::foot, Side::left, Side::right};
    EXPECT_TRUE(workable(oneTable(72_in, 30_in), room, false, 27_in).field.empty());
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

TEST(CommonReach, IsWhatHalfOfThePeopleHave) {
    const auto reaches = [](std::vector<Length> all) {
        std::vector<Helper> helpers;
        for (const Length r : all) {
            Helper h;
            h.reach = r;
            helpers.push_back(h);
        }
        return commonReach(helpers);
    };
    EXPECT_EQ(reaches({}), 27_in) << "common practice";
    EXPECT_EQ(reaches({27_in, 27_in, 27_in, 25_in}), 27_in);
    EXPECT_EQ(reaches({30_in, 25_in}), 30_in);
    EXPECT_EQ(reaches({30_in, 25_in, 25_in}), 25_in);
}

} // namespace
} // namespace bastewright
