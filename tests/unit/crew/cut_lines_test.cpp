#include "planners/crew/cut_lines.h"

#include <gmock/gmock.h>

namespace bastewright::crew {
namespace {

using ::testing::ElementsAre;

/// Rows at 2, 6, 10 in with marks at 2, 7, 12 in; even rows half a step over, at 4 1/2 and 9 1/2
/// in.
PinRows rows() {
    PinRows out;
    out.ribbons.odd = {2_in, 7_in, 12_in};
    out.ribbons.even = {4.5_in, 9.5_in};
    out.ribbons.side = {2_in, 6_in, 10_in};
    for (const Length at : out.ribbons.side)
        out.lines.push_back({at, marksOf(out, out.lines.size()), {}});
    return out;
}

std::vector<PlacedPoint> points(const PinRows& rows) {
    std::vector<PlacedPoint> out;
    const RowMarks marks{rows};
    for (const auto& [at, mark] : marks.all())
        out.push_back({at, 0});
    return out;
}

TEST(CutLines, LieMidwayBetweenRowsAndBetweenMarksAtHalfSteps) {
    const PinRows r = rows();
    EXPECT_THAT(cutLines({0_in, 12_in}, points(r), false, 4_in, &r),
                ElementsAre(0_in, 4_in, 8_in, 12_in));
    EXPECT_THAT(cutLines({0_in, 14_in}, points(r), true, 4_in, &r),
                ElementsAre(0_in, 3.25_in, 5.75_in, 8.25_in, 10.75_in, 14_in));
}

TEST(CutLines, OfRowsFromHeadToFootAreTheOtherWayRound) {
    PinRows r = rows();
    r.along = PinRows::Along::length;
    EXPECT_THAT(cutLines({0_in, 12_in}, points(r), true, 4_in, &r),
                ElementsAre(0_in, 4_in, 8_in, 12_in));
}

TEST(CutLines, GiveWayToAPinBesideItsMark) {
    PinRows r = rows();
    r.lines[1].aside = {{4.5_in, {3_in, 6_in}}}; // beyond the middle of 2 and 4 1/2 in
    EXPECT_THAT(cutLines({0_in, 14_in}, points(r), true, 4_in, &r),
                ElementsAre(0_in, 2.5_in, 5.75_in, 8.25_in, 10.75_in, 14_in));
    // Beyond the mark before its own no straight line tells them apart.
    r.lines[1].aside = {{4.5_in, {1_in, 6_in}}};
    EXPECT_THAT(cutLines({0_in, 14_in}, points(r), true, 4_in, &r),
                ElementsAre(0_in, 3.25_in, 8.25_in, 10.75_in, 14_in));
}

TEST(CutLines, HaveSomethingOnBothSides) {
    const PinRows r = rows();
    std::vector<PlacedPoint> some = points(r);
    std::erase_if(some, [](const PlacedPoint& p) { return p.at.y < 5_in; });
    EXPECT_THAT(cutLines({3_in, 12_in}, some, false, 4_in, &r), ElementsAre(3_in, 8_in, 12_in));
}

TEST(CutLines, LieInTheWidestGapsWherePointsStandFreely) {
    std::vector<PlacedPoint> free;
    for (const Length y : {3_in, 3.5_in, 5_in, 5.25_in, 7_in})
        free.push_back({{1_in, y}, 0});
    EXPECT_THAT(cutLines({0_in, 10_in}, free, false, 4_in, nullptr),
                ElementsAre(0_in, 4.25_in, 6.125_in, 10_in));
}

} // namespace
} // namespace bastewright::crew
