#include "planners/points/pin_rule.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

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

// A strip of 1.1 in between two seams holds a pin of 1 in only along it, whatever its direction;
// the plainest of several that fit is taken.
TEST(PinRule, LiesAlongAStripInAnyOfItsDirections) {
    struct Strip {
        double degrees;
        std::optional<int> angle;
    };
    for (const Strip& strip : {Strip{0, 0},
                               {90, 90},
                               {45, 45},
                               {135, 135},
                               {30, 30},
                               {60, 60},
                               {120, 120},
                               {150, 150},
                               {15, std::nullopt},
                               {75, std::nullopt}}) {
        const double a = strip.degrees * std::numbers::pi / 180;
        const Spot along{std::cos(a), std::sin(a)}, aside{-std::sin(a), std::cos(a)};
        std::vector<Segment> seams;
        for (const double side : {-0.55, 0.55}) {
            const auto at = [&](double t) {
                return Point{Length::nearestInches(10 + side * aside.x + t * along.x),
                             Length::nearestInches(10 + side * aside.y + t * along.y)};
            };
            seams.push_back({at(-9), at(9)});
        }
        const PinRule r = rule(seams);
        EXPECT_EQ(r.angleAt({10, 10}), strip.angle) << strip.degrees;
        // Where none is clear, the one with most room is said: within 15 degrees of the strip.
        const auto most = r.mostRoom({10, 10});
        EXPECT_LE(std::abs(most.angle - strip.degrees), 15) << strip.degrees;
        EXPECT_GT(most.room, 0.4) << strip.degrees;
    }
    EXPECT_EQ(rule({}).angleAt({10, 10}), 0) << "straight across where all fit";
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
