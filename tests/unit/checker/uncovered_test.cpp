#include "checker/geometry/uncovered.h"
#include "unit/checker/random.h"

#include <gmock/gmock.h>

#include <chrono>
#include <cmath>
#include <numbers>

namespace bastewright::check {
namespace {

using bastewright::testing::Random;
using ::testing::IsEmpty;
using ::testing::SizeIs;

Length nearest(Point at, const std::vector<Point>& centres) {
    double least = 1e9;
    for (const Point c : centres)
        least = std::min(least, std::hypot((c.x - at.x).in(), (c.y - at.y).in()));
    return Length::nearestInches(least);
}

/// Bounds of the greatest distance of a place of an area from its nearest centre, by halving
/// squares. The distance cannot change faster than the place moves, so a square whose middle is d
/// away has no place farther away than d and half its diagonal.
struct Depth {
    double least = 0, most = 0;
};

Depth depth(const Rect& area, const std::vector<Point>& centres, double fine) {
    struct Square {
        double x, y, half, most;
    };
    const auto away = [&](double x, double y) {
        double d = 1e9;
        for (const Point c : centres)
            d = std::min(d, std::hypot(c.x.in() - x, c.y.in() - y));
        return d;
    };
    Depth out;
    std::vector<Square> open;
    const auto add = [&](double x, double y, double half) {
        // Squares may reach beyond the area; they are judged where they lie in it.
        const double x0 = std::max(x - half, area.x0.in()), x1 = std::min(x + half, area.x1.in());
        const double y0 = std::max(y - half, area.y0.in()), y1 = std::min(y + half, area.y1.in());
        if (x0 > x1 || y0 > y1)
            return;
        const double d = away((x0 + x1) / 2, (y0 + y1) / 2);
        out.least = std::max(out.least, d);
        open.push_back({x, y, half, d + std::hypot(x1 - x0, y1 - y0) / 2});
        std::ranges::push_heap(open, {}, &Square::most);
    };
    const double size = std::max(area.width(), area.length()).in();
    add(area.x0.in() + size / 2, area.y0.in() + size / 2, size / 2);
    while (open.front().most > out.least + fine) {
        const Square s = open.front();
        std::ranges::pop_heap(open, {}, &Square::most);
        open.pop_back();
        const double h = s.half / 2;
        for (const double dx : {-h, h})
            for (const double dy : {-h, h})
                add(s.x + dx, s.y + dy, h);
    }
    out.most = std::max(out.least, open.front().most);
    return out;
}

std::vector<Point> squareGrid(Length side, int across, int down) {
    std::vector<Point> out;
    for (int i = 0; i < across; ++i)
        for (int j = 0; j < down; ++j)
            out.push_back({side / 2 + side * i, side / 2 + side * j});
    return out;
}

const Length kFour = Length::nearestInches(4 / std::numbers::sqrt2);

TEST(Uncovered, ASquareGridCoversItsHalfDiagonalAndNoLess) {
    const Rect area{{}, {}, 40_in, 24_in};
    EXPECT_THAT(uncovered(area, squareGrid(4_in, 10, 6), kFour + Length::nanometres(30), 9),
                IsEmpty());
    EXPECT_THAT(uncovered(area, squareGrid(4_in, 10, 6), kFour - 0.015625_in, 9), SizeIs(9));
}

TEST(Uncovered, AHoleInTheMiddleIsFoundAtItsDeepestPlace) {
    auto centres = squareGrid(4_in, 5, 5);
    std::erase(centres, Point{10_in, 10_in});
    const auto holes = uncovered({{}, {}, 20_in, 20_in}, centres, kFour + 0.125_in, 9);
    ASSERT_THAT(holes, SizeIs(1));
    EXPECT_NEAR(holes.front().at.x.in(), 10, 1e-3);
    EXPECT_NEAR(holes.front().at.y.in(), 10, 1e-3);
    EXPECT_NEAR(holes.front().nearest.in(), 4, 1e-3);
}

TEST(Uncovered, AHoleThatSamplesEveryHalfInchMissIsFound) {
    // The middle between four points of a grid lies off every half inch.
    const std::vector<Point> centres = [] {
        auto c = squareGrid(4_in, 4, 4);
        for (Point& p : c)
            p.x += 0.25_in, p.y += 0.25_in;
        return c;
    }();
    const Rect inner{2.25_in, 2.25_in, 14.25_in, 14.25_in};
    const Length radius = kFour - 0.0625_in;
    bool sampled = false;
    for (Length x = 2.5_in; x <= 14_in; x += 0.5_in)
        for (Length y = 2.5_in; y <= 14_in; y += 0.5_in)
            sampled = sampled || nearest({x, y}, centres) > radius + 0.25_in;
    EXPECT_FALSE(sampled);
    EXPECT_THAT(uncovered(inner, centres, radius, 20), SizeIs(9));
}

TEST(Uncovered, NothingCoversWithoutCentres) {
    EXPECT_FALSE(uncovered({{}, {}, 20_in, 20_in}, {}, 3_in, 9).empty());
    const std::vector<Point> far{{100_in, 100_in}};
    EXPECT_FALSE(uncovered({{}, {}, 20_in, 20_in}, far, 3_in, 9).empty());
}

TEST(Uncovered, TwoPointsInOnePlaceCountOnce) {
    auto centres = squareGrid(4_in, 5, 5);
    centres.push_back({10_in, 10_in});
    centres.push_back({10_in + Length::nanometres(1), 10_in});
    EXPECT_THAT(uncovered({{}, {}, 20_in, 20_in}, centres, kFour + 0.125_in, 9), IsEmpty());
    std::erase(centres, Point{2_in, 2_in});
    EXPECT_THAT(uncovered({{}, {}, 20_in, 20_in}, centres, kFour + 0.125_in, 9), SizeIs(1));
}

TEST(Uncovered, ADiscLargerThanTheAreaCoversIt) {
    EXPECT_THAT(uncovered({{}, {}, 6_in, 6_in}, std::vector<Point>{{3_in, 3_in}}, 5_in, 9),
                IsEmpty());
    EXPECT_FALSE(
        uncovered({{}, {}, 6_in, 6_in}, std::vector<Point>{{3_in, 3_in}}, 4_in, 9).empty());
}

/// Layouts near the limit: grids, shaken, thinned, doubled.
std::vector<Point> layout(Random& random, const Rect& area) {
    std::vector<Point> out;
    const Length step = Length::nearestInches(random.real(3.4, 4.1));
    const double shake = random.chance(50) ? random.real(0, 0.6) : 0;
    for (Length x = step / 2; x <= area.x1 + step / 2; x += step)
        for (Length y = step / 2; y <= area.y1 + step / 2; y += step) {
            if (random.chance(1))
                continue;
            const Point p{x + Length::nearestInches(random.real(-shake, shake)),
                          y + Length::nearestInches(random.real(-shake, shake))};
            out.push_back(p);
            if (random.chance(2))
                out.push_back({p.x + Length::nanometres(random.whole(0, 3)), p.y});
        }
    return out;
}

TEST(Uncovered, AgreesWithHalvingSquaresOnRandomLayouts) {
    int covered = 0, bare = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Random random{seed};
        const Rect area{{},
                        {},
                        Length::nearestInches(random.real(8, 30)),
                        Length::nearestInches(random.real(8, 30))};
        const auto centres = layout(random, area);
        const Length radius = kFour + 0.125_in;
        const Depth d = depth(area, centres, 1e-3);
        const auto holes = uncovered(area, centres, radius, 50);
        if (d.least > radius.in() + 1e-3) {
            ++bare;
            EXPECT_FALSE(holes.empty());
        }
        if (d.most < radius.in()) {
            ++covered;
            EXPECT_TRUE(holes.empty());
        }
        for (const Uncovered& hole : holes) {
            EXPECT_TRUE(area.contains(hole.at));
            EXPECT_GT(nearest(hole.at, centres) + Length::nanometres(2), radius);
            EXPECT_LE(abs(nearest(hole.at, centres) - hole.nearest), Length::nanometres(2));
        }
    }
    EXPECT_GT(covered, 50);
    EXPECT_GT(bare, 50);
}

TEST(Uncovered, ALargeTopTakesLessThanATenthOfASecond) {
    const auto begin = std::chrono::steady_clock::now();
    const auto holes = uncovered({{}, {}, 120_in, 120_in}, squareGrid(3_in, 40, 40), 2.25_in, 6);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    EXPECT_THAT(holes, IsEmpty());
    EXPECT_LT(took.count(), 0.1);
    RecordProperty("seconds", std::to_string(took.count()));
}

} // namespace
} // namespace bastewright::check
