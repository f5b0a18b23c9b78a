#include "measures/geometry.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

constexpr Rect rect(std::int64_t x0, std::int64_t y0, std::int64_t x1, std::int64_t y1) {
    return {Length::inches(x0), Length::inches(y0), Length::inches(x1), Length::inches(y1)};
}

TEST(Interval, TouchingIsNotOverlapping) {
    const Interval a{0_in, 10_in};
    EXPECT_TRUE(a.overlaps({9_in, 12_in}));
    EXPECT_FALSE(a.overlaps({10_in, 12_in}));
    EXPECT_TRUE(a.contains(10_in));
    EXPECT_TRUE(a.contains(a));
    EXPECT_FALSE(a.contains(Interval{5_in, 11_in}));
    EXPECT_EQ(intersection(a, {4_in, 20_in}), (Interval{4_in, 10_in}));
    EXPECT_LT(intersection(a, {12_in, 20_in}).size(), Length{});
    EXPECT_EQ((Interval{3_in, 10_in}).middle(), 6.5_in);
}

TEST(Rect, HasWidthAcrossAndLengthDown) {
    constexpr Rect top = rect(2, 3, 90, 115);
    EXPECT_EQ(top.width(), 88_in);
    EXPECT_EQ(top.length(), 112_in);
    EXPECT_EQ(top.middle(), (Point{46_in, 59_in}));
    EXPECT_DOUBLE_EQ(areaSquareInches(top), 88.0 * 112.0);
}

TEST(Rect, SharesAreaOrOnlyAnEdge) {
    EXPECT_TRUE(rect(0, 0, 4, 4).overlaps(rect(3, 3, 6, 6)));
    EXPECT_FALSE(rect(0, 0, 4, 4).overlaps(rect(4, 0, 8, 4)));
    EXPECT_FALSE(rect(0, 0, 4, 4).overlaps(rect(4, 4, 8, 8)));
    EXPECT_TRUE(rect(0, 0, 4, 4).contains(Point{4_in, 4_in}));
    EXPECT_TRUE(rect(0, 0, 4, 4).contains(rect(0, 1, 4, 2)));
    EXPECT_FALSE(rect(0, 0, 4, 4).contains(rect(0, 1, 5, 2)));
    EXPECT_EQ(intersection(rect(0, 0, 4, 4), rect(3, 1, 6, 9)), rect(3, 1, 4, 4));
    EXPECT_TRUE(intersection(rect(0, 0, 4, 4), rect(5, 1, 6, 9)).empty());
}

TEST(Rect, GrowsShrinksAndMoves) {
    EXPECT_EQ(rect(2, 2, 8, 8).grown(2_in), rect(0, 0, 10, 10));
    EXPECT_EQ(rect(2, 2, 8, 8).grown(-2_in), rect(4, 4, 6, 6));
    EXPECT_TRUE(rect(2, 2, 8, 8).grown(-3_in).empty());
    EXPECT_DOUBLE_EQ(areaSquareInches(rect(2, 2, 8, 8).grown(-4_in)), 0);
    EXPECT_EQ(rect(0, 0, 4, 4).moved({3_in, -1_in}), rect(3, -1, 7, 3));
}

TEST(Side, NamesAndKeepsOneValueEach) {
    PerSide<int> count;
    for (const Side s : kSides)
        count[s] = static_cast<int>(name(s).size());
    EXPECT_EQ(count, (PerSide<int>{4, 4, 4, 5}));
    EXPECT_TRUE(isAcross(Side::head) && isAcross(Side::foot));
    EXPECT_FALSE(isAcross(Side::left) || isAcross(Side::right));
}

} // namespace
} // namespace bastewright
