#include "planners/points/pin_rule.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace points;

PinRule rule(std::vector<Segment> seams, Basting basting = {}) {
    return PinRule{{0, 0, 20, 20}, seams, basting};
}
Segment seam(Length x0, Length y0, Length x1, Length y1) {
    return {{x0, y0}, {x1, y1}};
}

TEST(PinRule, KeepsItsWholeLengthClear) {
    const PinRule r = rule({seam(10_in, 0_in, 10_in, 20_in)});
    EXPECT_EQ(r.angleAt({9, 10}), 0);     // ends exactly half an inch from the seam
    EXPECT_EQ(r.angleAt({9.25, 10}), 90); // only along the seam
    EXPECT_EQ(r.angleAt({9.5, 10}), 90);
    EXPECT_EQ(r.angleAt({9.625, 10}), std::nullopt);
    EXPECT_EQ(r.angleAt({10, 10}), std::nullopt);
    EXPECT_DOUBLE_EQ(r.room({10, 10}, 0), 0);
}

TEST(PinRule, TurnsToFitBetweenDiagonals) {
    const PinRule r = rule({seam(0_in, 0_in, 20_in, 20_in), seam(1.5_in, 0_in, 20_in, 18.5_in)});
    // Between two diagonals 1.06 in apart only the third direction fits.
    EXPECT_EQ(r.angleAt({10.75, 10}), 45);
}

TEST(PinRule, KeepsTheEdge) {
    const PinRule r = rule({});
    EXPECT_EQ(r.angleAt({1.5, 1}), 0);
    EXPECT_EQ(r.angleAt({1, 1.5}), 90);
    EXPECT_EQ(r.angleAt({1, 1}), std::nullopt);
    EXPECT_DOUBLE_EQ(r.mostRoom({1, 1}).room, -1);
}

TEST(PinRule, DotsMayLieOnSeams) {
    Basting dots;
    dots.with = Basting::With::dots;
    const PinRule r = rule({seam(10_in, 0_in, 10_in, 20_in)}, dots);
    EXPECT_EQ(r.angleAt({10, 10}), 0);
    EXPECT_EQ(r.angleAt({1, 1}), 0);
    EXPECT_EQ(r.angleAt({0.5, 1}), std::nullopt);
}

TEST(PinRule, DistanceOfSegments) {
    EXPECT_DOUBLE_EQ(distance(Line{{0, 0}, {4, 0}}, Line{{2, -1}, {2, 1}}), 0);
    EXPECT_DOUBLE_EQ(distance(Line{{0, 0}, {4, 0}}, Line{{5, 0}, {6, 3}}), 1);
    EXPECT_DOUBLE_EQ(distance(Line{{0, 0}, {0, 0}}, Line{{3, 4}, {3, 4}}), 5);
}

} // namespace
} // namespace bastewright
