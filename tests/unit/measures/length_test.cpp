#include "measures/length.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

// NIST Handbook 44, Appendix C: 1 in = 2.54 cm exactly, 1 ft = 12 in, 1 yd = 0.9144 m exactly.
static_assert((1_in).nm() == 25'400'000);
static_assert(1_in == Length::nanometres(25'400'000));
static_assert(100_in == 254_cm);
static_assert(1_yd == Length::nanometres(914'400'000));
static_assert(1_yd == 36_in);
static_assert(10'000_in == 254'000_mm);

// Every 1/64 in and every 0.001 mm is a whole number of nanometres.
static_assert(Length::inch64ths(64) == 1_in);
static_assert(64 * Length::inch64ths(1) == 1_in);
static_assert(Length::inch64ths(1).nm() == 396'875);
static_assert(0.5_in == Length::inch64ths(32));
static_assert(12.125_in == Length::inch64ths(12 * 64 + 8));

TEST(Length, SumsNeverDrift) {
    Length sum;
    for (int i = 0; i < 64'000; ++i)
        sum += Length::inch64ths(1);
    EXPECT_EQ(sum, 1000_in);
    EXPECT_EQ(sum - 25'400_mm, Length{});
}

TEST(Length, ComputedInchesGoToTheNearestNanometreHalvesAwayFromZero) {
    EXPECT_EQ(Length::nearestInches(1.0 / 3.0).nm(), 8'466'667);
    EXPECT_EQ(Length::nearestInches(-1.0 / 3.0).nm(), -8'466'667);
    EXPECT_EQ(Length::nearestMillimetres(0.0000015).nm(), 2);
    EXPECT_EQ(Length::nearestMillimetres(-0.0000015).nm(), -2);
    EXPECT_EQ(Length::nearestInches(240), 240_in);
}

TEST(Length, DividesTowardsZeroAndCountsUpwards) {
    EXPECT_EQ(Length::nanometres(7) / 2, Length::nanometres(3));
    EXPECT_EQ(Length::nanometres(-7) / 2, Length::nanometres(-3));
    EXPECT_EQ(ceilDiv(0_in, 4_in), 0);
    EXPECT_EQ(ceilDiv(8_in, 4_in), 2);
    EXPECT_EQ(ceilDiv(8_in + Length::nanometres(1), 4_in), 3);
    EXPECT_DOUBLE_EQ(ratio(9_in, 36_in), 0.25);
}

TEST(Length, OrdersAndNegates) {
    EXPECT_LT(-1_in, Length{});
    EXPECT_EQ(abs(-3_in), 3_in);
    EXPECT_EQ(abs(3_in), 3_in);
    EXPECT_LT(25_mm, 1_in);
    EXPECT_GT(26_mm, 1_in);
}

TEST(Length, ReadsOutInInchesAndMillimetres) {
    EXPECT_DOUBLE_EQ((12.5_in).in(), 12.5);
    EXPECT_DOUBLE_EQ((12.5_in).mm(), 317.5);
}

} // namespace
} // namespace bastewright
