#include "planners/points/lattice.h"
#include "support/random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

using namespace points;

TEST(Lattice, ReachIsTheCircleRoundItsTriangle) {
    EXPECT_NEAR((Lattice{{0, 0}, {4, 0}, {0, 4}}.reach()), 2 * std::sqrt(2.0), 1e-12);
    // Equal sides a: a/√3, the thinnest covering (Kershner 1939).
    EXPECT_NEAR((Lattice{{0, 0}, {3, 0}, {1.5, 1.5 * std::sqrt(3.0)}}.reach()), std::sqrt(3.0),
                1e-12);
    EXPECT_GT((Lattice{{0, 0}, {3, 0}, {6, 0}}.reach()), 1e6) << "steps that span no plane";
}

TEST(Lattice, ReducedStepsAreShortestAndGiveTheSamePoints) {
    const Lattice l = Lattice{{0, 0}, {5, 0}, {23, 3}}.reduced();
    EXPECT_NEAR(std::abs(cross(l.along, l.aside)), 15, 1e-9);
    EXPECT_NEAR(dot(l.along, l.along), 13, 1e-9); // -2, 3
    EXPECT_NEAR(dot(l.aside, l.aside), 18, 1e-9); // 3, 3
    EXPECT_GE(dot(l.along, l.aside), 0);
}

// Those inside are all there, the others are no farther than a cell reaches: so places as far from
// the rim have their nearest point.
TEST(Lattice, PointsForAFieldAreAllInsideAndNoneBeyondReach) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        Random r{seed};
        const Lattice l{{r.real(-9, 9), r.real(-9, 9)},
                        {r.real(1, 5), r.real(-3, 3)},
                        {r.real(-3, 3), r.real(1, 5)}};
        if (std::abs(cross(l.along, l.aside)) < 2)
            continue;
        const Field f{r.real(-5, 0), r.real(-5, 0), r.real(5, 15), r.real(5, 15)};
        const Spots given = pointsFor(l, f);
        const Field wide = f.grown(l.reach() + 1e-9);
        for (const Spot p : given)
            EXPECT_TRUE(wide.contains(p)) << "seed " << seed;
        std::ptrdiff_t inside = 0;
        for (int j = -60; j <= 60; ++j)
            for (int i = -60; i <= 60; ++i)
                inside += f.contains(l.first + i * l.along + j * l.aside) ? 1 : 0;
        EXPECT_EQ(std::count_if(given.begin(), given.end(), [&](Spot p) { return f.contains(p); }),
                  inside)
            << "seed " << seed;
        EXPECT_GE(std::ssize(given), inside);
    }
    EXPECT_TRUE(pointsFor({{0, 0}, {3, 0}, {6, 0}}, {0, 0, 10, 10}).empty());
}

} // namespace
} // namespace bastewright
