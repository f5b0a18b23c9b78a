#include "planners/points/cell.h"
#include "planners/points/points.h"
#include "property/points/points_oracle.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace bastewright {
namespace {

// K. J. Nurmela and P. R. J. Östergård, 'Covering a square with up to 30 equal circles', Helsinki
// University of Technology, HUT-TCS-A62 (2000): smallest radii known for 1 to 30 circles that cover
// the unit square. Values for n = 4 to 6 as quoted in public, the others from memory of the report;
// all were reproduced to 2e-8 by coverings of our own.
constexpr std::array kSmallest{
    0.7071067812, 0.5590169944, 0.5038911093, 0.3535533906, 0.3261605840, 0.2987270622,
    0.2742918852, 0.2603001059, 0.2306369278, 0.2182335128, 0.2125160165, 0.2022758892,
    0.1943123714, 0.1855105473, 0.1796617599, 0.1694270516, 0.1656809296, 0.1606396636,
    0.1578419817, 0.1522468112, 0.1489537896, 0.1436931771, 0.1412448224, 0.1383028833,
    0.1335487066, 0.1317648756, 0.1286335345, 0.1273175535, 0.1255535080, 0.1220368688};

/// A square of 1000 in, so that the tolerance of 1/8 in and the raster of 1/8 in hardly count.
constexpr double kSide = 1000;

Job square(double radius) {
    Job job;
    job.top.width = {Length::nearestInches(kSide)};
    job.top.length = job.top.width;
    job.basting.with = Basting::With::dots;
    job.basting.edge = {};
    job.basting.spacing = Length::nearestInches(radius * kSide * std::sqrt(2.0));
    return job;
}

class CircleCover : public testing::TestWithParam<int> {};

TEST_P(CircleCover, FreePlacementIsNearTheBestKnownAndNeverBetter) {
    const int n = GetParam();
    const double allowed = n <= 12 ? 1.01 : 1.03;
    const Job job = square(kSmallest[static_cast<std::size_t>(n - 1)] * allowed);
    const PointsPlan plan = planPoints(job, {.effort = 1, .layout = Basting::Layout::fewest});
    const int used = static_cast<int>(plan.points.size());
    EXPECT_LE(used, n);
    ASSERT_GE(used, 1);
    const double radius = measured(job, {}, plan.points).farthest / kSide;
    EXPECT_GE(radius, kSmallest[static_cast<std::size_t>(used - 1)] - 2e-6);
    EXPECT_LE(radius, kSmallest[static_cast<std::size_t>(n - 1)] * allowed + 0.125 / kSide);
}
INSTANTIATE_TEST_SUITE_P(Points, CircleCover, testing::Range(1, 31));

TEST(CircleCover, NineSixteenAndTwentyFiveBeatTheSquareGrid) {
    for (const int k : {3, 4, 5}) {
        const double grid = 1 / (k * std::sqrt(2.0)); // k × k squares, a circle round each
        const Job job = square(grid * 0.985);
        const PointsPlan plan = planPoints(job, {.effort = 1, .layout = Basting::Layout::fewest});
        EXPECT_LE(static_cast<int>(plan.points.size()), k * k);
        EXPECT_LT(measured(job, {}, plan.points).farthest / kSide, grid);
    }
}

TEST(SmallestCircle, OfASquareASlitAndAPlace) {
    using points::middleOfSmallestCircle;
    EXPECT_EQ(middleOfSmallestCircle({{1, 2}}), (points::Spot{1, 2}));
    const auto middle = middleOfSmallestCircle({{0, 0}, {4, 0}, {4, 4}, {0, 4}, {2, 1}});
    EXPECT_NEAR(middle.x, 2, 1e-9);
    EXPECT_NEAR(middle.y, 2, 1e-9);
    const auto line = middleOfSmallestCircle({{0, 0}, {1, 0}, {3, 0}});
    EXPECT_NEAR(line.x, 1.5, 1e-9);
}

} // namespace
} // namespace bastewright
