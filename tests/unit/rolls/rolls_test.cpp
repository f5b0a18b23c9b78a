#include "planners/rolls/rolls.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace bastewright {
namespace {

TEST(RollDiameter, WoundTape) {
    // Published: tape 0.05 in thick on a core of 1 in, 5.5 in outside, is 459.458 in long
    // (mathforum.org, drmath 53452; area rule).
    const Length outside =
        rollDiameter(Length::nearestInches(459.458), Length::nearestInches(0.05), 1_in, 1.0);
    EXPECT_NEAR(outside.in(), 5.5, 1e-5);
    // Published: 10 m of 0.5 mm tape on a bobbin of 5 mm radius reaches a radius of 40.206 mm
    // (boards.straightdope.com 107067).
    EXPECT_NEAR(
        rollDiameter(Length::millimetres(10'000), Length::nearestMillimetres(0.5), 10_mm, 1.0).mm(),
        2 * 40.206, 2e-3);
}

// The same two worked examples with the area rule's figures in full, to a millionth.
TEST(RollDiameter, WorkedExamplesToAMillionth) {
    // (2.75² − 0.5²)·π / 0.05 = 459.457926 in
    EXPECT_NEAR(
        rollDiameter(Length::nearestInches(459.457926), Length::nearestInches(0.05), 1_in, 1.0)
            .in(),
        5.5, 1e-6);
    // r² = 25 + 10000·0.5/π: 40.205768 mm
    EXPECT_NEAR(
        rollDiameter(Length::millimetres(10'000), Length::nearestMillimetres(0.5), 10_mm, 1.0)
                .mm() /
            2,
        std::sqrt(25 + 5000 / std::numbers::pi), 1e-6);
}

TEST(RollDiameter, OfAQuilt) {
    // Common practice: 45 in of 4 mm roll to 76 mm, of 10 mm to 121 mm, wound without air.
    EXPECT_NEAR(rollDiameter(45_in, 4_mm, {}, 1.0).mm(), 76, 0.5);
    EXPECT_NEAR(rollDiameter(45_in, 10_mm, {}, 1.0).mm(), 121, 0.5);
}

TEST(RollDiameter, AgreesWithTheSpiralItself) {
    // Exact length of an Archimedean spiral from the core outward, by quadrature: the area rule is
    // within half a turn's thickness.
    for (const double core : {0.0, 20.0, 50.0})
        for (const double thick : {1.0, 4.0, 12.0})
            for (const double wound : {500.0, 1500.0, 3000.0}) {
                double angle = 0, length = 0;
                const double pitch = thick / (2 * std::numbers::pi);
                constexpr double kStep = 1e-3;
                for (; length < wound; angle += kStep)
                    length += std::hypot(core / 2 + pitch * (angle + kStep / 2), pitch) * kStep;
                const double spiral = core + 2 * pitch * angle;
                EXPECT_NEAR(rollDiameter(Length::nearestMillimetres(wound),
                                         Length::nearestMillimetres(thick),
                                         Length::nearestMillimetres(core), 1.0)
                                .mm(),
                            spiral, thick / 2)
                    << core << " " << thick << " " << wound;
            }
}

TEST(RollDiameter, AirMakesItWider) {
    const Length tight = rollDiameter(45_in, 4_mm, {}, 1.0);
    const Length loose = rollDiameter(45_in, 4_mm);
    EXPECT_NEAR(ratio(loose, tight), std::sqrt(1 / 0.8), 1e-6);
    EXPECT_EQ(rollDiameter({}, 4_mm), Length{});
    EXPECT_EQ(rollDiameter({}, 4_mm, 2_in), 2_in);
}

TEST(Sandwich, IsBattingAndTwoLayersOfCloth) {
    Batting batting;
    batting.thickness = 3_mm;
    EXPECT_EQ(sandwichThickness(batting), Length::nearestMillimetres(3.6));
}

Roll roll(Length diameter, Length along) {
    Roll r;
    r.diameter = diameter;
    r.along = along;
    return r;
}

TEST(Clips, OneEveryFifteenInchesAndAtLeastTwo) {
    Stash stash;
    stash.clips = {{3_in, 20}};
    for (const auto& [along, clips] :
         {std::pair{10_in, 2}, std::pair{30_in, 2}, std::pair{31_in, 3}, std::pair{112_in, 8}}) {
        const Roll r = clipped(roll(2_in, along), stash);
        EXPECT_EQ(r.clips, clips);
        EXPECT_EQ(r.clipHolds, 3_in);
        // Common practice: one every 12-18 in.
        EXPECT_LE(ratio(along, Length::inches(r.clips)), 18.0);
    }
}

TEST(Clips, TheSmallestThatHoldsAndOfWhichThereAreEnough) {
    Stash stash;
    stash.clips = {{4_in, 8}, {2_in, 8}, {3_in, 8}};
    EXPECT_EQ(clipped(roll(2_in, 60_in), stash).clipHolds, 2_in);
    EXPECT_EQ(clipped(roll(2_in + Length::nanometres(1), 60_in), stash).clipHolds, 3_in);
    // Six are needed for 90 in; of the small ones there are three.
    stash.clips = {{2_in, 3}, {3_in, 8}};
    EXPECT_EQ(clipped(roll(2_in, 90_in), stash).clipHolds, 3_in);
    // Too few of any: the size of which the fewest are missing.
    stash.clips = {{2_in, 3}, {3_in, 4}};
    EXPECT_EQ(clipped(roll(2_in, 90_in), stash).clipHolds, 3_in);
    stash.clips = {{2_in, 4}, {3_in, 4}};
    EXPECT_EQ(clipped(roll(2_in, 90_in), stash).clipHolds, 2_in);
    // Two boxes of one size are one.
    stash.clips = {{2_in, 3}, {3_in, 8}, {2_in, 3}};
    EXPECT_EQ(clipped(roll(2_in, 90_in), stash).clipHolds, 2_in);
}

TEST(Clips, NoneHoldsSoTheNumberNeededIsTold) {
    Stash stash;
    stash.clips = {{2_in, 8}, {4_in, 0}};
    const Roll r = clipped(roll(3_in, 60_in), stash);
    EXPECT_EQ(r.clipHolds, Length{});
    EXPECT_EQ(r.clips, 4);
}

} // namespace
} // namespace bastewright
