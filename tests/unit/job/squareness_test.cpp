#include "job/squareness.h"

#include <gtest/gtest.h>

#include <cmath>

namespace bastewright {
namespace {

using namespace literals;

/// A top sheared by so many inches: a parallelogram with a level head and foot, measured with a
/// perfect tape.
Top sheared(double width, double height, double lean) {
    Top top;
    top.width = {Length::nearestInches(width)};
    top.length = {Length::nearestInches(std::hypot(height, lean))};
    top.diagonals = {Length::nearestInches(std::hypot(width + lean, height)),
                     Length::nearestInches(std::hypot(width - lean, height))};
    return top;
}

TEST(Squareness, FindsTheLeanThatATopWasShearedBy) {
    for (const double lean : {-3.0, -0.5, 0.0, 0.25, 1.0, 6.0}) {
        const Squareness s = squareness(sheared(88, 112, lean));
        ASSERT_TRUE(s.lean);
        EXPECT_NEAR(s.lean->in(), lean, 1e-6);
        EXPECT_EQ(s.square, std::abs(lean) <= 0.5) << lean;
    }
}

TEST(Squareness, TellsHowFarReadingsAreApart) {
    Top top;
    top.width = {88_in, 87.25_in, 88.125_in};
    top.length = {112_in};
    const Squareness s = squareness(top);
    EXPECT_EQ(s.widthSpread, 0.875_in);
    EXPECT_EQ(s.lengthSpread, Length{});
    EXPECT_FALSE(s.lean);
    EXPECT_FALSE(s.square);
}

} // namespace
} // namespace bastewright
