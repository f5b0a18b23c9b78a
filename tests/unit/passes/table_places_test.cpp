#include "planners/passes/table_places.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright {
namespace {

using namespace literals;

/// Rows every 4 in, from 2 in on, on a top of 100 in.
const AxisLines& rows() {
    static const AxisLines lines = [] {
        std::vector<Length> at;
        for (int k = 0; k < 25; ++k)
            at.push_back(Length::inches(4 * k + 2));
        return axisLines(at, 100_in, 4_in, {});
    }();
    return lines;
}

/// Rows in what nobody gets to from either end of the table.
int outOfReach(const AxisChoice& c, Length at) {
    return static_cast<int>(std::ranges::count_if(
        c.lines.at, [&](Length row) { return row > at + c.reach && row < at + c.size - c.reach; }));
}

std::vector<Length> placesOf(const AxisChoice& c) {
    const TablePlaces places = tablePlaces(c);
    return {places.begin(), places.end()};
}

TEST(TablePlaces, WhatNobodyReachesFallsBetweenRowsWhereItFits) {
    // 60 in deep: 3 in of the middle are out of a reach of 28 1/2 in, and rows are 4 in apart.
    AxisChoice c{.lines = rows(),
                 .size = 60_in,
                 .places = {20_in, 30_in},
                 .lo = 0,
                 .hi = rows().last(),
                 .before = {},
                 .reach = 28.5_in};
    const auto between = placesOf(c);
    EXPECT_TRUE(std::ranges::any_of(between, [&](Length at) { return outOfReach(c, at) == 0; }));
    c.reach = {};
    const auto others = placesOf(c);
    EXPECT_LT(others.size(), between.size());
    for (const Length at : between) {
        EXPECT_GE(at, c.places.lo);
        EXPECT_LE(at, c.places.hi);
    }
    c.reach = 27_in; // 6 in are more than rows are apart
    EXPECT_EQ(placesOf(c), others);
    c.reach = 30_in; // all of it is within reach
    EXPECT_EQ(placesOf(c), others);
}

TEST(TablePlaces, AreEachListedOnceThePreferredFirst) {
    const AxisChoice one{.lines = rows(),
                         .size = 60_in,
                         .places = {20_in, 20_in},
                         .lo = 3,
                         .hi = 9,
                         .before = 12_in,
                         .reach = {}};
    EXPECT_EQ(placesOf(one), std::vector{20_in});
    AxisChoice after = one;
    after.places = {10_in, 40_in};
    EXPECT_EQ(placesOf(after).front(), 12_in) << "moved as little as may be";
    after.hi = rows().last();
    EXPECT_EQ(placesOf(after).front(), 10_in) << "new area to the table's edge";
}

} // namespace
} // namespace bastewright
