#include "job/job.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

Top gridTop(int columns, int rows, Length block, Length sashing, Length border) {
    Top top;
    BlockGrid g;
    g.columns = columns;
    g.rows = rows;
    g.block = block;
    g.sashing = sashing;
    g.border = border;
    top.grid = g;
    top.width = {g.width()};
    top.length = {g.length()};
    return top;
}

bool has(const std::vector<Segment>& seams, Segment s) {
    return std::ranges::find(seams, s) != seams.end();
}

TEST(TopRect, TakesTheLargestReadings) {
    Top top;
    top.width = {60_in, 60.5_in, 59.5_in};
    top.length = {72_in};
    EXPECT_EQ(topRect(top), (Rect{{}, {}, 60.5_in, 72_in}));
    EXPECT_EQ(topRect(Top{}), Rect{});
}

TEST(TopEnvelope, IsTheTopWhereNothingSaysThatItLeans) {
    Top top;
    top.width = {60_in, 59_in};
    top.length = {80_in};
    EXPECT_EQ(topEnvelope(top), topRect(top));
    top.diagonals = {100_in, 100_in};
    EXPECT_EQ(topEnvelope(top), topRect(top));
    EXPECT_EQ(topEnvelope(Top{}), Rect{});
}

TEST(TopEnvelope, ReachesFurtherWhereDiagonalsDiffer) {
    // Sides 60 and 80 of which the head lies straight and the foot 5 in aside: the height is
    // √(80² − 5²), the diagonals √(65² + 80² − 5²) and √(55² + 80² − 5²).
    Top top;
    top.width = {60_in};
    top.length = {80_in};
    top.diagonals = {Length::nearestInches(std::sqrt(65. * 65 + 6375)),
                     Length::nearestInches(std::sqrt(55. * 55 + 6375))};
    const Rect reach = topEnvelope(top);
    EXPECT_NEAR(reach.width().in(), 65, 1e-6);
    EXPECT_NEAR(reach.length().in(), 80 + 5. * 60 / 80, 1e-6);
    std::swap(top.diagonals[0], top.diagonals[1]);
    EXPECT_EQ(topEnvelope(top), reach);
}

TEST(Grid, AddsUpBordersBlocksAndSashing) {
    const Top top = gridTop(7, 9, 10_in, 2_in, 3_in);
    EXPECT_EQ(top.grid->width(), 88_in);
    EXPECT_EQ(top.grid->length(), 112_in);
}

TEST(Seams, AreBlockSashingAndBorderEdges) {
    const auto seams = seamsOf(gridTop(2, 1, 10_in, 2_in, 3_in));
    // Down: 3, 13, 15, 25; across: 3, 13. None along the edge of the top.
    EXPECT_EQ(seams.size(), 6u);
    for (const Length x : {3_in, 13_in, 15_in, 25_in})
        EXPECT_TRUE(has(seams, {{x, 3_in}, {x, 13_in}}));
    for (const Length y : {3_in, 13_in})
        EXPECT_TRUE(has(seams, {{3_in, y}, {25_in, y}}));
}

TEST(Seams, BlocksThatTouchShareOne) {
    const auto seams = seamsOf(gridTop(3, 2, 10_in, 0_in, 0_in));
    // Down at 10 and 20; across at 10; the outer edges are edges of the top.
    EXPECT_EQ(seams.size(), 3u);
    EXPECT_TRUE(has(seams, {{10_in, 0_in}, {10_in, 20_in}}));
    EXPECT_TRUE(has(seams, {{0_in, 10_in}, {30_in, 10_in}}));
}

TEST(Seams, InnerLinesEndAtTheSashing) {
    Top top = gridTop(2, 2, 10_in, 2_in, 0_in);
    top.grid->innerX = {5_in};
    const auto seams = seamsOf(top);
    EXPECT_TRUE(has(seams, {{5_in, 0_in}, {5_in, 10_in}}));
    EXPECT_TRUE(has(seams, {{5_in, 12_in}, {5_in, 22_in}}));
    top = gridTop(2, 2, 10_in, 0_in, 0_in);
    top.grid->innerX = {5_in};
    EXPECT_TRUE(has(seamsOf(top), {{5_in, 0_in}, {5_in, 20_in}}));
}

TEST(Seams, ABorderTakesUpWhatTheReadingsDiffer) {
    Top top = gridTop(1, 1, 10_in, 0_in, 3_in);
    top.width = {17_in};
    EXPECT_TRUE(has(seamsOf(top), {{3.5_in, 3_in}, {3.5_in, 13_in}}));
}

TEST(Seams, FurtherOnesAreTakenOnceEitherWayRound) {
    Top top;
    top.width = {60_in};
    top.length = {72_in};
    top.seams = {{{10_in, 10_in}, {20_in, 30_in}},
                 {{20_in, 30_in}, {10_in, 10_in}},
                 {{0_in, 0_in}, {0_in, 72_in}}};
    EXPECT_EQ(seamsOf(top), (std::vector<Segment>{{{10_in, 10_in}, {20_in, 30_in}}}));
}

TEST(Seams, AreSewnInTheDitchAndWhileUndecided) {
    Job job;
    using enum Quilting::Method;
    for (const auto& [method, sewn] :
         {std::pair{inTheDitch, true}, std::pair{undecided, true}, std::pair{acrossSeams, false},
          std::pair{singleTacks, false}, std::pair{freeMotion, false}}) {
        job.quilting.method = method;
        EXPECT_EQ(seamsAreSewn(job), sewn);
    }
}

} // namespace
} // namespace bastewright
