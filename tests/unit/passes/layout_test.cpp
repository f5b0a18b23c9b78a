#include "unit/passes/boards.h"

#include <gtest/gtest.h>

#include <string>

namespace bastewright {
namespace {

using namespace literals;
using testing::faults;
using testing::fewest;
using testing::rowsAcross;
using testing::tableOf;
using Start = Basting::Start;

struct Case {
    Length width, length, tableWidth, tableLength;
    std::size_t middle, beside; ///< passes at most
};

// Counts to keep, the better way to lie: found by a rough search over windows of any place, without
// looking at pins.
const std::vector<Case> kCases{
    {40_in, 50_in, 30_in, 48_in, 3, 2},    {40_in, 50_in, 36_in, 72_in, 3, 2},
    {40_in, 50_in, 60_in, 60_in, 1, 1},    {40_in, 50_in, 60_in, 108_in, 1, 1},
    {60_in, 76_in, 30_in, 72_in, 5, 4},    {60_in, 76_in, 60_in, 60_in, 3, 2},
    {60_in, 76_in, 60_in, 96_in, 1, 1},    {70_in, 90_in, 30_in, 48_in, 9, 8},
    {70_in, 90_in, 30_in, 72_in, 5, 4},    {70_in, 90_in, 60_in, 60_in, 5, 4},
    {70_in, 90_in, 60_in, 72_in, 3, 2},    {70_in, 90_in, 60_in, 108_in, 3, 2},
    {78_in, 94.5_in, 36_in, 72_in, 7, 6},  {78_in, 94.5_in, 60_in, 96_in, 3, 2},
    {88_in, 112_in, 30_in, 72_in, 11, 8},  {88_in, 112_in, 36_in, 72_in, 7, 6},
    {88_in, 112_in, 30_in, 144_in, 5, 4},  {88_in, 112_in, 60_in, 72_in, 5, 4},
    {88_in, 112_in, 60_in, 96_in, 3, 2},   {90_in, 108_in, 30_in, 144_in, 5, 4},
    {90_in, 108_in, 60_in, 60_in, 5, 4},   {100_in, 100_in, 60_in, 60_in, 5, 4},
    {100_in, 100_in, 60_in, 108_in, 3, 2}, {100_in, 100_in, 36_in, 72_in, 11, 8},
    {108_in, 120_in, 60_in, 72_in, 5, 4},  {120_in, 120_in, 30_in, 144_in, 7, 6},
    {120_in, 120_in, 60_in, 60_in, 9, 9}};

TEST(Layout, TakesNoMorePassesThanAreKnown) {
    for (const Case& c : kCases) {
        SCOPED_TRACE(std::to_string(c.width.in()) + " x " + std::to_string(c.length.in()) + " on " +
                     std::to_string(c.tableWidth.in()) + " x " +
                     std::to_string(c.tableLength.in()));
        const Board board = rowsAcross(c.width, c.length);
        const std::size_t middle = fewest(board, c.tableLength, c.tableWidth, Start::centred);
        const std::size_t beside = fewest(board, c.tableLength, c.tableWidth, Start::besideMiddle);
        EXPECT_GE(middle, 1u);
        EXPECT_GE(beside, 1u);
        EXPECT_LE(middle, c.middle);
        EXPECT_LE(beside, c.beside);
        EXPECT_LE(beside, middle);
    }
}

TEST(Layout, IsSoundForEveryStartAndTable) {
    for (const Case& c : kCases)
        for (const bool turned : {false, true})
            for (const Start start : {Start::centred, Start::besideMiddle, Start::oneEnd}) {
                const Board board = rowsAcross(c.width, c.length);
                const Lie lie = turned ? tableOf(c.tableLength, c.tableWidth)
                                       : tableOf(c.tableWidth, c.tableLength);
                const LayoutInput in{board, lie, start, 2_in};
                const auto layout = layOut(in);
                if (!layout)
                    continue;
                EXPECT_EQ(faults(board, lie, layout->sequence), "");
                const Sequence even = evened(in, layout->sequence);
                EXPECT_EQ(faults(board, lie, even), "");
                EXPECT_EQ(even.steps.size(), layout->sequence.steps.size());
                EXPECT_LE(even.cost, layout->sequence.cost);
                EXPECT_LE(layout->least, layout->sequence.steps.size());
            }
}

// From one end smoothing runs one way: the first pass lies at an end, and the counts are those of a
// start beside the middle.
TEST(Layout, FromOneEndBeginsInACornerAndNeedsNoMorePasses) {
    for (const Case& c : kCases) {
        const Board board = rowsAcross(c.width, c.length);
        const Lie lie = tableOf(c.tableWidth, c.tableLength);
        const auto layout = layOut({board, lie, Start::oneEnd, 2_in});
        if (!layout)
            continue;
        const Window& first = layout->sequence.windows.front();
        EXPECT_TRUE(first.x0 == 0 || first.x1 == board.x.last());
        EXPECT_TRUE(first.y0 == 0 || first.y1 == board.y.last());
        EXPECT_LE(layout->sequence.steps.size(), c.beside + 4);
    }
}

// 100 × 100 in on 60 × 60: the middle, then the four corners, as hands do it. Two fields meet where
// the quilt is no longer than two tables less the rim and the anchor.
TEST(Layout, TheMiddleThenTheCorners) {
    const Board board = rowsAcross(100_in, 100_in);
    const Lie lie = tableOf(60_in, 60_in);
    const auto layout = layOut({board, lie, Start::centred, 2_in});
    ASSERT_TRUE(layout);
    ASSERT_EQ(layout->sequence.steps.size(), 5u);
    int corners = 0;
    for (const Step& s : layout->sequence.steps)
        corners += regionOf(board, layout->sequence.cells, s.fresh).parts.size() > 1 ? 1 : 0;
    EXPECT_GE(corners, 2) << "what a corner pass bastes is an L";
}

// On a table of 30 × 48, where boundaries may lie at every inch: two columns of four rows, and no
// more than a trial of the model found. Between rows of pins it takes two passes more.
TEST(Layout, SmallTablesWhereBoundariesMayLieAnywhere) {
    const Board one = testing::squares(78_in, 94.5_in, 1_in),
                other = testing::squares(88_in, 112_in, 1_in);
    EXPECT_EQ(fewest(one, 48_in, 30_in, Start::besideMiddle), 8u);
    EXPECT_LE(fewest(one, 48_in, 30_in, Start::centred), 11u);
    EXPECT_LE(fewest(other, 48_in, 30_in, Start::besideMiddle), 10u);
    EXPECT_LE(fewest(other, 48_in, 30_in, Start::centred), 11u);
    EXPECT_EQ(fewest(rowsAcross(78_in, 94.5_in), 48_in, 30_in, Start::besideMiddle), 10u);
    EXPECT_EQ(fewest(rowsAcross(88_in, 112_in), 48_in, 30_in, Start::besideMiddle), 12u);
}

TEST(Layout, NoRimIsLostWhereTheTopEndsOnTheTable) {
    EXPECT_EQ(fewest(rowsAcross(26_in, 70_in), 72_in, 30_in, Start::centred), 1u);
    EXPECT_EQ(fewest(rowsAcross(30_in, 72_in), 72_in, 30_in, Start::centred), 1u);
}

// A last row past the edge is pulled in instead of being a pass of its own.
TEST(Layout, ARowPastTheEdgeIsPulledIn) {
    const Board board = rowsAcross(60_in, 76_in);
    const auto layout = layOut({board, tableOf(60_in, 72_in), Start::besideMiddle, 2_in});
    ASSERT_TRUE(layout);
    ASSERT_EQ(layout->sequence.steps.size(), 1u);
    EXPECT_EQ(layout->sequence.steps.front().pulls.size(), 1u);
}

// Past two edges at once: one row, the corner, the other row.
TEST(Layout, RowsPastTwoEdgesArePulledInOneAfterAnother) {
    const Board board = rowsAcross(62_in, 75_in);
    const Lie lie = tableOf(60_in, 72_in);
    for (const Start start : {Start::centred, Start::besideMiddle}) {
        const auto layout = layOut({board, lie, start, 2_in});
        ASSERT_TRUE(layout);
        ASSERT_EQ(layout->sequence.steps.size(), 1u);
        EXPECT_EQ(layout->sequence.steps.front().pulls.size(), 3u);
        EXPECT_EQ(faults(board, lie, layout->sequence), "");
    }
}

// With 27 in of reach and 4 of leaning the middle 10 in of a table 72 in deep are out of reach:
// pinned after the quilt has been pulled across.
TEST(Layout, ANarrowMiddleIsPulledAcross) {
    const Board board = rowsAcross(68_in, 120_in);
    const Lie lie = tableOf(72_in, 144_in, 31_in);
    const auto layout = layOut({board, lie, Start::besideMiddle, 2_in});
    ASSERT_TRUE(layout);
    ASSERT_EQ(layout->sequence.steps.size(), 1u);
    const Step& only = layout->sequence.steps.front();
    ASSERT_EQ(only.pulls.size(), 1u);
    EXPECT_LE(abs(only.pulls.front().at.x - only.at.x), 12_in);
    EXPECT_EQ(faults(board, lie, layout->sequence), "");
}

// A table too deep for its middle costs at most two passes more than one just deep enough.
TEST(Layout, ATooDeepTableIsUsedInPart) {
    const Board board = rowsAcross(88_in, 112_in);
    for (const int reach : {24, 26, 28, 30}) {
        const Length r = Length::inches(reach);
        const std::size_t enough = fewest(board, 72_in, 2 * r + 12_in, Start::besideMiddle, r);
        for (Length deep = 2 * r + 13_in; deep <= 72_in; deep += 3_in) {
            const std::size_t part = fewest(board, 72_in, deep, Start::besideMiddle, r);
            EXPECT_GE(part, 1u) << reach << ", " << deep.in();
            EXPECT_LE(part, enough + 2) << reach << ", " << deep.in();
            for (const bool turned : {false, true}) {
                const Lie lie = turned ? tableOf(deep, 72_in, r) : tableOf(72_in, deep, r);
                if (const auto l = layOut({board, lie, Start::besideMiddle, 2_in})) {
                    EXPECT_EQ(faults(board, lie, l->sequence), "");
                }
            }
        }
    }
}

TEST(Layout, WorksFromWhateverSideIsOpen) {
    const Board board = rowsAcross(60_in, 60_in);
    for (const Side wall : kSides) {
        Lie lie = tableOf(72_in, 30_in);
        lie.closed = {wall};
        const auto layout = layOut({board, lie, Start::besideMiddle, 2_in});
        ASSERT_TRUE(layout) << name(wall);
        EXPECT_EQ(faults(board, lie, layout->sequence), "") << name(wall);
    }
    Lie shut = tableOf(72_in, 30_in);
    shut.closed = {kSides.begin(), kSides.end()};
    EXPECT_FALSE(layOut({board, shut, Start::besideMiddle, 2_in}));
}

// 48 × 30 under 36 × 48 in: at most three passes, none with less than a fifth of the pins.
TEST(Layout, PassesAreEven) {
    const Board board = rowsAcross(36_in, 48_in);
    for (const Start start : {Start::besideMiddle, Start::oneEnd}) {
        std::optional<Sequence> best;
        for (const bool turned : {false, true}) {
            const Lie lie = turned ? tableOf(48_in, 30_in) : tableOf(30_in, 48_in);
            const LayoutInput in{board, lie, start, 2_in};
            if (const auto layout = layOut(in)) {
                Sequence s = evened(in, layout->sequence);
                if (!best || s.steps.size() < best->steps.size())
                    best = std::move(s);
            }
        }
        ASSERT_TRUE(best);
        EXPECT_LE(best->steps.size(), 3u);
        for (const Step& s : best->steps)
            EXPECT_GE(s.points * 5, static_cast<int>(board.points.size()));
    }
}

} // namespace
} // namespace bastewright
