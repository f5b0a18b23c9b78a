#include "planners/points/buckets.h"
#include "planners/points/cell.h"
#include "planners/points/holes.h"
#include "planners/points/lattice.h"
#include "planners/points/points.h"
#include "planners/points/relax.h"
#include "property/points/made_tops.h"
#include "support/random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace bastewright {
namespace {

using namespace points;

Rules small(Seams seams) {
    return rulesFor(madeTop(seams, 26_in, 40_in, 1_in));
}

class PlaceMaps : public testing::TestWithParam<Seams> {};

// Distances against every raster place of the top.
TEST_P(PlaceMaps, KnowTheNearestAllowedPlace) {
    const Rules rules = small(GetParam());
    const PlaceMap map{rules};
    Spots allowed;
    map.eachIn(rules.top(), map.pitch(), [&](Spot s) {
        EXPECT_TRUE(rules.pin.angleAt(s));
        allowed.push_back(s);
    });
    EXPECT_EQ(allowed, rules.places(rules.top(), map.pitch()));
    Random r{7};
    for (int i = 0; i < 300; ++i) {
        // On the raster, so that the nearest raster place is the place itself.
        const Spot at{rules.anchor.x + map.pitch() * r.count(0, 150),
                      rules.anchor.y + map.pitch() * r.count(0, 200)};
        if (!rules.top().contains(at))
            continue;
        double least = map.reach();
        int within = 0, visited = 0;
        for (const Spot s : allowed) {
            least = std::min(least, std::sqrt(distanceSquared(s, at)));
            within += distanceSquared(s, at) <= squared(1.5) ? 1 : 0;
        }
        EXPECT_NEAR(map.away(at), least, 1e-5);
        map.eachNear(at, 1.5, [&](Spot) { ++visited; });
        EXPECT_EQ(visited, within);
    }
    EXPECT_EQ(map.inside({-3, 5}).x, rules.pin.edge());
}

// Every sweep leaves each point where a point may lie, and the farthest place no farther.
TEST_P(PlaceMaps, PointsRelaxSoThatNothingIsFarther) {
    const Rules rules = small(GetParam());
    const PlaceMap map{rules};
    Random r{11};
    Spots points;
    for (const Spot p : pointsFor({{0, 0}, {4.6, 0}, {2.3, 4}}, rules.top())) {
        Spot best{};
        double least = 1e18;
        const Spot wanted{p.x + r.real(-0.7, 0.7), p.y + r.real(-0.7, 0.7)};
        map.eachIn(rules.top(), map.pitch(), [&](Spot s) {
            if (const double d = distanceSquared(s, wanted); d < least) {
                least = d;
                best = s;
            }
        });
        points.push_back(best);
    }
    double before = coveringRadius(points, rules.top());
    const double first = before;
    for (int sweep = 0; sweep < 8; ++sweep) {
        relax(points, rules, map, 1, rules.top());
        const double now = coveringRadius(points, rules.top());
        EXPECT_LE(now, before + 1e-4);
        before = now;
        for (const Spot p : points)
            EXPECT_TRUE(rules.pin.angleAt(p));
    }
    EXPECT_LT(before, first);
}
INSTANTIATE_TEST_SUITE_P(Points, PlaceMaps,
                         testing::Values(Seams::none, Seams::every4, Seams::triangles6));

/// Share of the points well inside a top whose cell has six corners.
double sixSided(const Job& job, const PointsPlan& plan) {
    const Rect area = topRect(job.top);
    const Field top{0, 0, area.width().in(), area.length().in()};
    const double s = job.basting.spacing.in();
    Buckets near{top, s};
    for (std::size_t i = 0; i < plan.points.size(); ++i)
        near.add(static_cast<int>(i), {plan.points[i].at.x.in(), plan.points[i].at.y.in()});
    int six = 0, all = 0;
    Spots cell, scratch;
    for (std::size_t i = 0; i < plan.points.size(); ++i) {
        const Spot p{plan.points[i].at.x.in(), plan.points[i].at.y.in()};
        if (!top.grown(-1.5 * s).contains(p))
            continue;
        cellOf(static_cast<int>(i), p, near, top, 2 * s, cell, scratch);
        ++all;
        six += cell.size() == 6 ? 1 : 0;
    }
    return all > 0 ? static_cast<double>(six) / all : 0;
}

// Where seams leave the choice, points lie as in a honeycomb: the thinnest covering (Kershner
// 1939).
TEST(Honeycomb, IsTakenWhereSeamsAllowIt) {
    const Job plain = madeTop(Seams::none, 48_in, 60_in, 2_in);
    EXPECT_GT(sixSided(plain, planPoints(plain)), 0.9);
    Job wide = madeTop(Seams::none, 48_in, 60_in, 2_in);
    for (const Length x : {16_in, 32_in})
        wide.top.seams.push_back({{x, 0_in}, {x, 60_in}});
    EXPECT_GT(sixSided(wide, planPoints(wide)), 0.6);
}

} // namespace
} // namespace bastewright
