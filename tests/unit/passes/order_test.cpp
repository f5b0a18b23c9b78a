#include "planners/passes/order.h"

#include <gtest/gtest.h>

#include <numeric>
#include <set>

namespace bastewright {
namespace {

using namespace literals;

Layout gridOf(int columns, int rows) {
    LayoutInput in;
    in.top = {Length::inches(20 * columns + 6), Length::inches(20 * rows + 6)};
    in.surface.table = {30_in, 30_in};
    in.surface.field = {2_in, 2_in, 28_in, 28_in};
    in.anchor = 6_in;
    for (const Layout& l : layouts(in))
        if (l.shape == Shape::grid)
            return l;
    return {};
}

Length shifted(const Layout& l, const std::vector<std::size_t>& order) {
    Length sum;
    for (std::size_t i = 1; i < order.size(); ++i)
        sum += way(shiftBetween(l.areas[order[i - 1]], l.areas[order[i]]));
    return sum;
}

bool outward(const Layout& l, const std::vector<std::size_t>& order) {
    std::set<std::size_t> done;
    for (const std::size_t i : order) {
        if (done.empty() ? i != l.first : std::ranges::any_of(l.areas[i].needs, [&](std::size_t n) {
                return !done.contains(n);
            }))
            return false;
        done.insert(i);
    }
    return done.size() == l.areas.size();
}

TEST(BestOrder, EqualsBruteForceOnSmallLayouts) {
    for (const auto& [columns, rows] : {std::pair{1, 5}, {3, 3}, {1, 7}, {3, 1}}) {
        const Layout l = gridOf(columns, rows);
        std::vector<std::size_t> order(l.areas.size());
        std::iota(order.begin(), order.end(), 0);
        std::optional<Length> best;
        do
            if (outward(l, order) && (!best || shifted(l, order) < *best))
                best = shifted(l, order);
        while (std::ranges::next_permutation(order).found);
        const WorkingOrder found = bestOrder(l);
        ASSERT_TRUE(best);
        EXPECT_EQ(found.shifted, *best) << columns << " x " << rows;
        EXPECT_TRUE(found.exact);
        EXPECT_TRUE(outward(l, found.areas));
        EXPECT_EQ(shifted(l, found.areas), found.shifted);
    }
}

TEST(ShortestWay, EqualsBruteForceAndIsNeverAboveTheOutwardOrder) {
    for (const auto& [columns, rows] : {std::pair{1, 5}, {3, 1}, {1, 7}, {3, 3}}) {
        const Layout l = gridOf(columns, rows);
        std::vector<std::size_t> order(l.areas.size());
        std::iota(order.begin(), order.end(), 0);
        Length best = shifted(l, order);
        if (l.areas.size() < 9) // 5040 orders at most
            do
                best = std::min(best, shifted(l, order));
            while (std::ranges::next_permutation(order).found);
        else // row by row and back, from step to step
            best = shifted(l, {0, 1, 2, 5, 4, 3, 6, 7, 8});
        EXPECT_EQ(shortestWay(l), best) << columns << " x " << rows;
        EXPECT_LE(shortestWay(l), bestOrder(l).shifted);
    }
}

TEST(ShortestWay, OfManyAreasIsABound) {
    const Layout l = gridOf(5, 5);
    EXPECT_LE(shortestWay(l), bestOrder(l).shifted);
    EXPECT_GT(shortestWay(l), Length{});
}

TEST(BestOrder, IsExactForTwentyFivePassesAndMore) {
    for (const auto& [columns, rows] : {std::pair{5, 5}, {5, 7}}) {
        const Layout l = gridOf(columns, rows);
        ASSERT_EQ(l.areas.size(), std::size_t(columns * rows));
        const WorkingOrder found = bestOrder(l);
        EXPECT_TRUE(found.exact);
        EXPECT_TRUE(outward(l, found.areas));
    }
}

TEST(BestOrder, StaysOutwardWhenCutShort) {
    const Layout l = gridOf(5, 5);
    const WorkingOrder narrow = bestOrder(l, 20);
    EXPECT_FALSE(narrow.exact);
    EXPECT_TRUE(outward(l, narrow.areas));
    EXPECT_GE(narrow.shifted, bestOrder(l).shifted);
}

} // namespace
} // namespace bastewright
