#include "planners/points/points.h"
#include "unit/points/plain_top.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

Job sewn(Length width, Length length, Length spacing) {
    return plainTop(width, length, spacing, Basting::With::thread);
}

Length widest(const std::vector<Length>& at) {
    Length out{};
    for (std::size_t i = 1; i < at.size(); ++i)
        out = std::max(out, at[i] - at[i - 1]);
    return out;
}

// Common practice: rows 3 to 6 in apart, a stitch and the gap after it about 3 in together, the
// first row an inch inside the edge.
TEST(StitchRows, LieASpacingApartWithAStitchEveryThreeInches) {
    for (const Length spacing : {3_in, 4_in, 5_in, 6_in}) {
        const PointsPlan plan = planPoints(sewn(88_in, 112_in, spacing));
        EXPECT_TRUE(plan.findings.empty());
        ASSERT_TRUE(plan.rows);
        const PinRows& rows = *plan.rows;
        EXPECT_FALSE(plan.blocks);
        EXPECT_EQ(rows.ribbons.odd, rows.ribbons.even);
        EXPECT_TRUE(rows.singles.empty());
        EXPECT_EQ(rows.ribbons.side.front(), 1_in);
        EXPECT_LE(widest(rows.ribbons.side), spacing + 0.125_in);
        EXPECT_LE(widest(rows.ribbons.odd), 3.125_in);
        EXPECT_EQ(plan.points.size(), rows.ribbons.odd.size() * rows.lines.size());
        const int lies = rows.along == PinRows::Along::width ? 0 : 90;
        EXPECT_TRUE(std::ranges::all_of(plan.points,
                                        [&](const PlacedPoint& p) { return p.angle == lies; }));
    }
}

TEST(StitchRows, RunAsAsked) {
    const Job job = sewn(60_in, 72_in, 4_in);
    const PointsPlan across = planPoints(job, {.along = PinRows::Along::width});
    const PointsPlan down = planPoints(job, {.along = PinRows::Along::length});
    EXPECT_EQ(across.rows->along, PinRows::Along::width);
    EXPECT_EQ(down.rows->along, PinRows::Along::length);
    EXPECT_EQ(planPoints(job).points.size(), std::min(across.points.size(), down.points.size()));
}

// Seams are crossed, and what is asked of pins alone is not heard.
TEST(StitchRows, CrossSeamsAndAreNeitherByTheBlocksNorFewest) {
    Job job = sewn(72_in, 72_in, 4_in);
    const PointsPlan plain = planPoints(job);
    job.top.grid =
        BlockGrid{.columns = 6, .rows = 6, .block = 12_in, .innerX = {4_in}, .innerY = {}};
    job.quilting.method = Quilting::Method::inTheDitch;
    for (const auto layout : {Basting::Layout::blocks, Basting::Layout::fewest}) {
        job.basting.layout = layout;
        const PointsPlan plan = planPoints(job);
        EXPECT_TRUE(plan.rows);
        EXPECT_EQ(plan.points.size(), plain.points.size());
        EXPECT_TRUE(plan.findings.empty());
    }
}

TEST(StitchRows, AreEvenOnTopsOfAnySize) {
    for (Length width = 8_in; width < 40_in; width += 0.3125_in) {
        const PointsPlan plan = planPoints(sewn(width, 30_in, 4_in));
        ASSERT_TRUE(plan.rows);
        std::set<Length> gaps;
        for (const auto* at : {&plan.rows->ribbons.odd, &plan.rows->ribbons.side}) {
            gaps.clear();
            for (std::size_t i = 1; i < at->size(); ++i)
                gaps.insert((*at)[i] - (*at)[i - 1]);
            ASSERT_FALSE(gaps.empty());
            EXPECT_LE(*gaps.rbegin() - *gaps.begin(), 0.125_in) << width.in();
        }
    }
}

} // namespace
} // namespace bastewright
