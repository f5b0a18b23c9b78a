#include "checker/geometry/distance.h"
#include "checker/geometry/partition.h"
#include "checker/geometry/segments.h"
#include "checker/geometry/standing_reach.h"
#include "unit/checker/random.h"

#include <gmock/gmock.h>

#include <map>

namespace bastewright::check {
namespace {

using bastewright::testing::Random;
using Kind = PartitionFault::Kind;

const Rect kWhole{{}, {}, 12_in, 9_in};

TEST(Partition, BricksMakeAWhole) {
    const std::vector<Rect> bricks{{0_in, 0_in, 5_in, 4_in},
                                   {5_in, 0_in, 12_in, 4_in},
                                   {0_in, 4_in, 8_in, 9_in},
                                   {8_in, 4_in, 12_in, 9_in}};
    EXPECT_FALSE(partitionFault(kWhole, bricks));
}

TEST(Partition, NamesTheFaultAndItsPlace) {
    const Rect left{0_in, 0_in, 5_in, 9_in};
    const auto fault = [&](const Rect& right) {
        return partitionFault(kWhole, std::vector{left, right}).value();
    };
    EXPECT_EQ(fault({6_in, 0_in, 12_in, 9_in}).kind, Kind::hole);
    EXPECT_EQ(fault({6_in, 0_in, 12_in, 9_in}).where, (Rect{5_in, 0_in, 6_in, 9_in}));
    EXPECT_EQ(fault({4_in, 0_in, 12_in, 9_in}).kind, Kind::overlap);
    EXPECT_EQ(fault({4_in, 0_in, 12_in, 9_in}).where, (Rect{4_in, 0_in, 5_in, 9_in}));
    EXPECT_EQ(fault({5_in, 0_in, 13_in, 9_in}).kind, Kind::outside);
    EXPECT_EQ(fault({5_in, 0_in, 5_in, 9_in}).kind, Kind::empty);
    EXPECT_EQ(partitionFault(kWhole, {}).value().where, kWhole);
    EXPECT_TRUE(partitionFault(kWhole, std::vector{kWhole, kWhole}));
}

TEST(Partition, ANanometreIsAHole) {
    const std::vector<Rect> parts{{0_in, 0_in, 5_in, 9_in},
                                  {5_in + Length::nanometres(1), 0_in, 12_in, 9_in}};
    EXPECT_TRUE(partitionFault(kWhole, parts));
}

TEST(Partition, AgreesWithCountingSquaresOnRandomRectangles) {
    int good = 0;
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Random random{seed};
        std::vector<Rect> parts;
        // Cut the whole a few times, then spoil it sometimes.
        parts.push_back({{}, {}, 4_in, 4_in});
        for (int i = 0; i < 4; ++i) {
            Rect& r = parts[static_cast<std::size_t>(random.whole(0, std::ssize(parts) - 1))];
            Rect other = r;
            if (random.chance(50))
                r.x1 = other.x0 =
                    Length::inches(random.whole(r.x0.nm(), r.x1.nm()) / Length::kInch);
            else
                r.y1 = other.y0 =
                    Length::inches(random.whole(r.y0.nm(), r.y1.nm()) / Length::kInch);
            parts.push_back(other);
        }
        std::erase_if(parts, [](const Rect& r) { return r.empty(); });
        if (random.chance(50))
            parts[static_cast<std::size_t>(random.whole(0, std::ssize(parts) - 1))].x1 += 1_in;
        if (random.chance(20))
            parts.pop_back();
        std::map<std::pair<int, int>, int> squares;
        bool outside = false;
        for (const Rect& r : parts)
            for (int x = 0; x < 6; ++x)
                for (int y = 0; y < 6; ++y)
                    if (r.overlaps({Length::inches(x), Length::inches(y), Length::inches(x + 1),
                                    Length::inches(y + 1)})) {
                        ++squares[{x, y}];
                        outside = outside || x > 3 || y > 3;
                    }
        bool once = !outside && squares.size() == 16;
        for (const auto& [square, times] : squares)
            once = once && times == 1;
        EXPECT_EQ(!partitionFault({{}, {}, 4_in, 4_in}, parts), once);
        good += once ? 1 : 0;
    }
    EXPECT_GT(good, 300);
    EXPECT_LT(good, 1700);
}

TEST(Segments, APinLiesAboutItsCentre) {
    EXPECT_EQ(pinSegment({{10_in, 5_in}, 0}, 1_in), (Segment{{9.5_in, 5_in}, {10.5_in, 5_in}}));
    EXPECT_EQ(pinSegment({{10_in, 5_in}, 90}, 1_in), (Segment{{10_in, 4.5_in}, {10_in, 5.5_in}}));
}

TEST(Segments, DistanceOfTwo) {
    const Segment seam{{0_in, 0_in}, {10_in, 0_in}};
    const auto to = [&](Segment s) { return distanceWithin(s, seam, 100_in); };
    EXPECT_EQ(to({{3_in, 2_in}, {5_in, 2_in}}), 2_in);   // side by side
    EXPECT_EQ(to({{4_in, 3_in}, {4_in, 9_in}}), 3_in);   // pointing at it
    EXPECT_EQ(to({{4_in, -1_in}, {4_in, 1_in}}), 0_in);  // across it
    EXPECT_EQ(to({{13_in, 4_in}, {13_in, 9_in}}), 5_in); // beyond its end: 3, 4, 5
    EXPECT_EQ(to({{12_in, 0_in}, {14_in, 0_in}}), 2_in); // in its line
    EXPECT_EQ(to({{5_in, 0_in}, {5_in, 0_in}}), 0_in);   // a place on it
    EXPECT_GE(distanceWithin({{0_in, 2_in}, {1_in, 2_in}}, seam, 1_in), 1_in);
}

TEST(Segments, DistanceAgreesWithSamplesOfBoth) {
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Random random{seed};
        const auto spot = [&] {
            return Point{Length::nearestInches(random.real(-3, 3)),
                         Length::nearestInches(random.real(-3, 3))};
        };
        const Segment a{spot(), spot()}, b{spot(), spot()};
        const auto on = [](const Segment& s, int i) {
            return Point{s.from.x + (s.to.x - s.from.x) * i / 200,
                         s.from.y + (s.to.y - s.from.y) * i / 200};
        };
        Length least = 100_in;
        for (int i = 0; i <= 200; ++i)
            for (int j = 0; j <= 200; ++j)
                least = std::min(least, distance(on(a, i), on(b, j)));
        const Length found = distanceWithin(a, b, 100_in);
        EXPECT_LE(found, least + Length::nanometres(2));
        EXPECT_GE(found, least - 0.0625_in); // half a step of each: at most 8.5 in / 400 twice
    }
}

TEST(Reach, IsToTheFarthestCorner) {
    const Rect table{0_in, 0_in, 72_in, 30_in};
    const Rect box{10_in, 5_in, 30_in, 12_in};
    EXPECT_DOUBLE_EQ(reachNeeded(table, Side::head, {8_in, 32_in}, box), 12);
    EXPECT_DOUBLE_EQ(reachNeeded(table, Side::foot, {8_in, 32_in}, box), 25);
    EXPECT_DOUBLE_EQ(reachNeeded(table, Side::head, {35_in, 59_in}, box), std::hypot(25, 12));
    EXPECT_DOUBLE_EQ(reachNeeded(table, Side::left, {0_in, 24_in}, box), 30);
    EXPECT_DOUBLE_EQ(reachNeeded(table, Side::right, {0_in, 24_in}, box), 62);
}

TEST(Reach, FromTheBestPlaceIsNoMoreThanFromAnyOther) {
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Random random{seed};
        const Rect table{
            {}, {}, Length::inches(random.whole(20, 72)), Length::inches(random.whole(20, 40))};
        const Point p{Length::inches(random.whole(0, 20)), Length::inches(random.whole(0, 20))};
        const Rect box{p.x, p.y, p.x + Length::inches(random.whole(0, 40)),
                       p.y + Length::inches(random.whole(0, 20))};
        for (const Side side : kSides) {
            const Length width = standingWidth(table, side);
            double best = 1e9;
            for (Length lo; lo + width <= extent(table, side).hi; lo += 0.125_in)
                best = std::min(best, reachNeeded(table, side, {lo, lo + width}, box));
            EXPECT_LE(leastReachNeeded(table, side, box), best + 1e-9);
            EXPECT_GE(leastReachNeeded(table, side, box), best - 0.125);
        }
    }
}

TEST(Distance, OfAPlaceFromAnArea) {
    const Rect area{10_in, 10_in, 20_in, 20_in};
    EXPECT_EQ(distance(Point{15_in, 12_in}, area), 0_in);
    EXPECT_EQ(distance(Point{20_in, 12_in}, area), 0_in);
    EXPECT_EQ(distance(Point{23_in, 12_in}, area), 3_in);
    EXPECT_EQ(distance(Point{23_in, 24_in}, area), 5_in);
}

} // namespace
} // namespace bastewright::check
