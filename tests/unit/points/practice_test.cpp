#include "planners/points/points.h"
#include "unit/points/plain_top.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

std::size_t count(const Job& job) {
    return planPoints(job).points.size();
}

// Counts that quilters report (common practice, no formula): a plan lands in the same range, and
// below rows and columns laid from the edges in (square grid, arithmetic).
TEST(Practice, CountsAreInTheRangeQuiltersReport) {
    // 'A couple of hundred' for a lap quilt at 3 in; about 250 at a hand's breadth.
    const auto lap = count(plainTop(42_in, 54_in, 3_in));
    EXPECT_GE(lap, 150u);
    EXPECT_LE(lap, 250u);
    // A twin at four fingers' width: about 450.
    const auto twin = count(plainTop(66_in, 90_in, 3.25_in));
    EXPECT_GE(twin, 380u);
    EXPECT_LE(twin, 500u);
}

TEST(Practice, FewerThanRowsAndColumnsFromTheEdges) {
    struct {
        Length width, length;
        std::size_t grid;
    } const cases[]{{42_in, 60_in, 165},
                    {60_in, 75_in, 285},
                    {70_in, 90_in, 414},
                    {90_in, 100_in, 575},
                    {108_in, 108_in, 729}};
    for (const auto& c : cases)
        EXPECT_LT(count(plainTop(c.width, c.length, 4_in)), c.grid);
}

// Common practice: thirty 10 in blocks at 2 in take about 750 pins, 25 a block.
TEST(Practice, ThirtyBlocksAtTwoInches) {
    Job job = plainTop(50_in, 60_in, 2_in);
    job.quilting.method = Quilting::Method::inTheDitch;
    BlockGrid g;
    g.columns = 5;
    g.rows = 6;
    g.block = 10_in;
    job.top.grid = g;
    const PointsPlan plan = planPoints(job);
    EXPECT_LE(plan.points.size(), 750u);
    EXPECT_GE(plan.points.size(), 560u);
}

// The hall's quilt of the scenario: rows that a sentence tells.
TEST(Practice, HarbourLights) {
    Job job = plainTop(88_in, 112_in, 4_in);
    job.quilting.method = Quilting::Method::inTheDitch;
    BlockGrid g;
    g.columns = 7;
    g.rows = 9;
    g.block = 10_in;
    g.sashing = 2_in;
    g.border = 3_in;
    job.top.grid = g;
    const PointsPlan plan = planPoints(job);
    EXPECT_TRUE(plan.findings.empty());
    ASSERT_TRUE(plan.rows);
    EXPECT_TRUE(plan.rows->singles.empty());
    EXPECT_LE(plan.points.size(), 500u);
}

} // namespace
} // namespace bastewright
