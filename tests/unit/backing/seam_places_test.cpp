#include "planners/backing/seam_places.h"

#include <gmock/gmock.h>

namespace bastewright::backing {
namespace {

using testing::ElementsAre;

TEST(SeamPlaces, OneStripNeedsNone) {
    const std::vector<StripRange> strips{{2_in, 40_in}};
    EXPECT_TRUE(placeSeams(strips, 40_in, {}, {})->empty());
    EXPECT_FALSE(placeSeams(strips, 41_in, {}, {}));
}

TEST(SeamPlaces, AsNearAsAskedWithinTheStrips) {
    const std::vector<StripRange> strips{{2_in, 40_in}, {2_in, 40_in}};
    EXPECT_THAT(*placeSeams(strips, 70_in, {}, std::vector{35_in}), ElementsAre(35_in));
    EXPECT_THAT(*placeSeams(strips, 70_in, {}, std::vector{60_in}), ElementsAre(40_in));
}

TEST(SeamPlaces, KeepsOffLinesAndMayTouchTheirLimit) {
    const std::vector<StripRange> strips{{2_in, 40_in}, {2_in, 40_in}};
    const std::vector<KeepAway> middle{{35_in, 2_in}};
    EXPECT_THAT(*placeSeams(strips, 70_in, middle, std::vector{36_in}), ElementsAre(37_in));
    const std::vector<KeepAway> all{{35_in, 6_in}};
    EXPECT_FALSE(placeSeams(strips, 70_in, all, std::vector{35_in}));
}

TEST(SeamPlaces, FindsTheOnlyGap) {
    // Three strips, lines everywhere but at 20 and 50.
    std::vector<KeepAway> lines;
    for (int x = 1; x < 70; ++x)
        if (x != 20 && x != 50)
            lines.push_back({Length::inches(x), 1_in});
    const std::vector<StripRange> strips{{2_in, 30_in}, {2_in, 30_in}, {2_in, 30_in}};
    EXPECT_THAT(*placeSeams(strips, 70_in, lines, std::vector{30_in, 40_in}),
                ElementsAre(20_in, 50_in));
}

} // namespace
} // namespace bastewright::backing
