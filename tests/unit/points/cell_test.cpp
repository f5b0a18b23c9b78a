#include "planners/points/cell.h"
#include "support/random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace bastewright {
namespace {

using namespace points;

double areaOf(const Spots& polygon) {
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i)
        twice += cross(polygon[i], polygon[(i + 1) % polygon.size()]);
    return std::abs(twice) / 2;
}

TEST(Cell, OfOnePointIsTheWholeTop) {
    const Field top{0, 0, 30, 20};
    Buckets near{top, 3};
    near.add(0, {4, 5});
    Spots cell, scratch;
    cellOf(0, {4, 5}, near, top, 1, cell, scratch);
    EXPECT_NEAR(areaOf(cell), 600, 1e-9);
    EXPECT_NEAR(farthestFrom({4, 5}, cell), 26 * 26 + 15 * 15, 1e-9);
}

TEST(Cell, CellsPartitionTheTopAndHoldWhatIsNearest) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Random r{seed};
        const Field top{0, 0, r.real(5, 40), r.real(5, 40)};
        Spots points;
        Buckets near{top, 3};
        for (int i = r.count(1, 60); i > 0; --i) {
            points.push_back({r.real(0, top.x1), r.real(0, top.y1)});
            near.add(static_cast<int>(points.size()) - 1, points.back());
        }
        double sum = 0;
        Spots cell, scratch;
        for (std::size_t i = 0; i < points.size(); ++i) {
            cellOf(static_cast<int>(i), points[i], near, top, r.real(0.5, 8), cell, scratch);
            sum += areaOf(cell);
            for (const Spot corner : cell)
                for (const Spot other : points)
                    ASSERT_GE(distanceSquared(other, corner),
                              distanceSquared(points[i], corner) - 1e-6)
                        << "seed " << seed;
        }
        EXPECT_NEAR(sum, top.area(), 1e-6 * top.area()) << "seed " << seed;
    }
}

TEST(SmallestCircle, HasItsMiddleWhereTheFarthestPlaceIsNearest) {
    EXPECT_EQ(middleOfSmallestCircle({{3, 4}}), (Spot{3, 4}));
    const Spot obtuse = middleOfSmallestCircle({{0, 0}, {10, 0}, {5, 1}}); // the long side's middle
    EXPECT_NEAR(obtuse.x, 5, 1e-12);
    EXPECT_NEAR(obtuse.y, 0, 1e-12);
    const Spot even = middleOfSmallestCircle({{0, 0}, {2, 0}, {1, std::sqrt(3.0)}});
    EXPECT_NEAR(even.y, 1 / std::sqrt(3.0), 1e-12);
    const Spot line = middleOfSmallestCircle({{0, 0}, {4, 4}, {2, 2}, {1, 1}});
    EXPECT_NEAR(line.x, 2, 1e-9);
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        Random r{seed};
        Spots places;
        for (int i = r.count(2, 12); i > 0; --i)
            places.push_back({r.real(0, 10), r.real(0, 10)});
        const Spot middle = middleOfSmallestCircle(places);
        const double least = farthestFrom(middle, places);
        for (int step = 0; step < 200; ++step) {
            const Spot other{middle.x + r.real(-1, 1), middle.y + r.real(-1, 1)};
            ASSERT_GE(farthestFrom(other, places), least - 1e-9) << "seed " << seed;
        }
    }
}

} // namespace
} // namespace bastewright
