#include "plan/share.h"

#include <gmock/gmock.h>

using namespace bastewright;
using testing::ElementsAre;

namespace {

Zone zoneWith(std::vector<Point> points) {
    Zone z{.id = "A1", .pass = 1, .area = {0_in, 0_in, 12_in, 12_in}, .points = {}};
    for (const Point p : points)
        z.points.push_back({p, 0});
    return z;
}

std::vector<Point> at(const Zone& zone, std::optional<Share> share) {
    std::vector<Point> out;
    for (const PlacedPoint& p : pointsOf(zone, share))
        out.push_back(p.at);
    return out;
}

// Three in a column at the left, two at the right; not in any order.
const Point kA{2_in, 2_in}, kB{2_in, 6_in}, kC{2_in, 10_in}, kD{8_in, 2_in}, kE{8_in, 10_in};
const Zone kFive = zoneWith({kD, kC, kA, kE, kB});

TEST(Share, WithoutOneATaskHasAllPoints) {
    EXPECT_EQ(pointsOf(kFive, {}), kFive.points);
    EXPECT_EQ(pointCount(kFive, {}), 5);
}

TEST(Share, CountsFromItsSideAndAlongIt) {
    EXPECT_THAT(at(kFive, Share{Side::left, 2}), ElementsAre(kA, kB));
    EXPECT_THAT(at(kFive, Share{Side::right, 3}), ElementsAre(kD, kC, kE));
    EXPECT_THAT(at(kFive, Share{Side::head, 1}), ElementsAre(kA));
    EXPECT_THAT(at(kFive, Share{Side::foot, 1}), ElementsAre(kE));
}

TEST(Share, TwoFromOppositeSidesMakeTheWholeZone) {
    for (const auto& [side, other] :
         {std::pair{Side::left, Side::right}, std::pair{Side::head, Side::foot}})
        for (int n = 0; n <= 5; ++n) {
            auto both = pointsOf(kFive, Share{side, n});
            std::ranges::copy(pointsOf(kFive, Share{other, 5 - n}), std::back_inserter(both));
            EXPECT_THAT(both, testing::UnorderedElementsAreArray(kFive.points)) << n;
        }
}

TEST(Share, OfMoreThanThereIsIsAll) {
    EXPECT_EQ(pointCount(kFive, Share{Side::left, 9}), 5);
    EXPECT_EQ(pointsOf(kFive, Share{Side::left, 9}).size(), 5U);
    EXPECT_TRUE(pointsOf(kFive, Share{Side::left, -1}).empty());
}

} // namespace
