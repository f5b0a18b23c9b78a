#include "planners/points/points.h"
#include "unit/points/plain_top.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright {
namespace {

Job sprayed(Length width, Length length, Length deep) {
    return plainTop(width, length, deep, Basting::With::spray);
}

/// As exactly as middles stand on ribbons.
constexpr Length kMarked = Length::inch64ths(8);

void expectSideBySide(const std::vector<Length>& middles, Length line, Length most) {
    ASSERT_FALSE(middles.empty());
    EXPECT_LE(2 * middles.front(), most + kMarked);
    EXPECT_LE(2 * (line - middles.back()), most + kMarked);
    for (std::size_t i = 1; i < middles.size(); ++i) {
        EXPECT_LE(middles[i] - middles[i - 1], most + kMarked);
        EXPECT_GE(middles[i] - middles[i - 1], most / 2);
    }
}

// Common practice: bands of 12 to 18 in, side by side from edge to edge.
TEST(PatchRows, LieSideBySideOnTopsOfAnySize) {
    for (const Length deep : {10_in, 12_in, 18_in})
        for (Length width = 8_in; width < 100_in; width += 3.0625_in) {
            SCOPED_TRACE(std::to_string(width.in()));
            const Length length = width + 7.3125_in;
            const PointsPlan plan = planPoints(sprayed(width, length, deep));
            EXPECT_TRUE(plan.findings.empty());
            EXPECT_FALSE(plan.blocks);
            ASSERT_TRUE(plan.rows);
            const PinRows& rows = *plan.rows;
            EXPECT_EQ(rows.ribbons.odd, rows.ribbons.even);
            EXPECT_TRUE(rows.singles.empty());
            EXPECT_EQ(rows.ribbons.side.size(), std::size_t(ceilDiv(length, deep)));
            EXPECT_EQ(rows.ribbons.odd.size(), std::size_t(ceilDiv(width, deep)));
            expectSideBySide(rows.ribbons.side, length, deep);
            expectSideBySide(rows.ribbons.odd, width, deep);
            EXPECT_EQ(plan.points.size(), rows.ribbons.odd.size() * rows.lines.size());
            EXPECT_TRUE(std::ranges::all_of(plan.points,
                                            [](const PlacedPoint& p) { return p.angle == 0; }));
        }
}

// A queen of 90 x 108 in: six bands of 18 in, five patches in each.
TEST(PatchRows, OfAQueenAreThirty) {
    const PointsPlan plan = planPoints(sprayed(90_in, 108_in, 18_in));
    EXPECT_EQ(plan.points.size(), 30u);
    ASSERT_TRUE(plan.rows);
    EXPECT_EQ(plan.rows->gap, 18_in);
    EXPECT_EQ(plan.rows->step, 18_in);
    EXPECT_EQ(plan.rows->ribbons.side.front(), 9_in);
}

// Neither seams nor what is asked of pins alone change them.
TEST(PatchRows, CrossSeamsAndAreNeitherByTheBlocksNorFewestNorOffTheEdge) {
    Job job = sprayed(72_in, 72_in, 18_in);
    const PointsPlan plain = planPoints(job);
    job.top.grid =
        BlockGrid{.columns = 6, .rows = 6, .block = 12_in, .innerX = {3_in}, .innerY = {}};
    job.quilting.method = Quilting::Method::inTheDitch;
    job.basting.edge = 6_in;
    for (const auto layout : {Basting::Layout::blocks, Basting::Layout::fewest}) {
        job.basting.layout = layout;
        const PointsPlan plan = planPoints(job);
        EXPECT_EQ(plan.points, plain.points);
        EXPECT_TRUE(plan.findings.empty());
    }
}

TEST(PatchRows, RunAsAsked) {
    const Job job = sprayed(60_in, 80_in, 18_in);
    EXPECT_EQ(planPoints(job).rows->along, PinRows::Along::width);
    EXPECT_EQ(planPoints(job, {.along = PinRows::Along::length}).rows->along,
              PinRows::Along::length);
}

} // namespace
} // namespace bastewright
