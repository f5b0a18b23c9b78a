#include "planners/points/holes.h"
#include "planners/points/points.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace bastewright {
namespace {

using namespace points;

/// Part of the plane that discs of the covering radius take, counted with overlaps, for a pattern
/// of two points in a tile of 2a × 2b (rows of points 2a apart, every other row shifted by a).
double density(double a, double b, bool staggered) {
    Spots all;
    for (int j = -6; j <= 6; ++j)
        for (int i = -6; i <= 6; ++i) {
            all.push_back({2 * a * i, 2 * b * j});
            all.push_back({2 * a * i + (staggered ? a : 0), 2 * b * j + b});
        }
    const double r = coveringRadius(all, {0, 0, 2 * a, 2 * b});
    return std::numbers::pi * r * r * 2 / (2 * a * 2 * b);
}

// R. Kershner, 'The number of circles covering a set', American Journal of Mathematics 61 (1939):
// the thinnest covering of the plane by equal circles has density 2π/√27, reached by the triangular
// lattice.
TEST(Bound, TriangularLatticeIsKershners) {
    EXPECT_NEAR(density(std::sqrt(3.0), 3, true), 2 * std::numbers::pi / std::sqrt(27.0), 1e-4);
}

// Elementary: discs round a square grid's points that reach its cells' middles have density π/2.
TEST(Bound, SquareGridIsHalfPi) {
    EXPECT_NEAR(density(1, 2, false), std::numbers::pi / 2, 1e-4);
}

TEST(Bound, CountsByKershner) {
    // r² = 8 sq in at 4 in: one point holds at most 8·3√3/2 = 20.785 sq in.
    EXPECT_EQ(leastPoints(20.78, 4_in), 1);
    EXPECT_EQ(leastPoints(20.79, 4_in), 2);
    EXPECT_EQ(leastPoints(90.0 * 108.0, 4_in), 468);
    EXPECT_EQ(leastPoints(0, 4_in), 0);
}

TEST(Bound, RowsOnAPlainTopComeNearIt) {
    Job job;
    job.top.width = {108_in};
    job.top.length = {120_in};
    const PointsPlan plan = planPoints(job);
    // The tolerance of 1/8 in makes each disc 9.0 % larger, the edges cost about as much.
    EXPECT_GE(static_cast<double>(plan.points.size()), plan.bound * 0.93);
    EXPECT_LE(static_cast<double>(plan.points.size()), plan.bound * 1.06);
}

TEST(Holes, FindsWhatIsOpenAndNothingElse) {
    const Field field{0, 0, 4, 4};
    EXPECT_FALSE(holes(Spots{}, field, 1).empty());
    EXPECT_TRUE(holes(Spots{{2, 2}}, field, 2.83).empty());
    EXPECT_FALSE(holes(Spots{{2, 2}}, field, 2.82).empty());
    // A slit between two discs that no half-inch sample need hit.
    EXPECT_FALSE(holes(Spots{{0, 2}, {4.2, 2}}, field, 2.89).empty());
    EXPECT_NEAR(coveringRadius(Spots{{1, 1}, {3, 1}, {1, 3}, {3, 3}}, field), std::sqrt(2.0), 2e-5);
}

} // namespace
} // namespace bastewright
