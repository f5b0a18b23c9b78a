#include "planners/passes/axis.h"

#include <gtest/gtest.h>
#include <queue>

#include <map>
#include <set>

namespace bastewright {
namespace {

using namespace literals;

AxisLines everyInch(int quilt) {
    std::vector<Length> at;
    for (int i = 0; i < quilt; ++i)
        at.push_back(Length::inches(i) + 0.5_in);
    return axisLines(at, Length::inches(quilt), 1_in, {});
}

AxisTable table(int size) {
    return {Length::inches(size), 2_in, 2_in, {}, {}, 6_in, {}};
}

/// Fewest passes along one axis by breadth-first search over basted stretches on whole inches. The
/// table takes whole inches; its field is what lies inside its rim, or to an end of the quilt that
/// lies on it; 6 in of what is basted stay on it.
int byBreadth(int quilt, int size, std::optional<int> firstAt) {
    using Stretch = std::pair<int, int>;
    std::map<Stretch, int> passes;
    std::queue<Stretch> queue;
    const auto field = [&](int at) {
        return Stretch{at <= 0 ? 0 : at + 2, at + size >= quilt ? quilt : at + size - 2};
    };
    const auto reach = [&](Stretch s, int n) {
        if (s.first < s.second && passes.emplace(s, n).second)
            queue.push(s);
    };
    for (int at = -size; at <= quilt; ++at)
        if (!firstAt || at == *firstAt)
            reach(field(at), 1);
    while (!queue.empty()) {
        const Stretch s = queue.front();
        queue.pop();
        if (s == Stretch{0, quilt})
            return passes[s];
        for (int at = -size; at <= quilt; ++at) {
            const Stretch f = field(at);
            Stretch next = s;
            if (f.second > s.second && at <= s.second - 6 && f.first <= s.second)
                next.second = f.second;
            else if (f.first < s.first && at + size >= s.first + 6 && f.second >= s.first)
                next.first = f.first;
            else
                continue;
            reach(next, passes[s] + 1);
        }
    }
    return 0;
}

// From an end, and from every place of the first table, as few as there can be.
TEST(OutwardFrom, TakesAsFewAsABreadthFirstSearchOnWholeInches) {
    for (const int size : {16, 20, 30, 36, 48})
        for (int quilt = 20; quilt <= 120; quilt += 7) {
            SCOPED_TRACE(std::to_string(quilt) + " on " + std::to_string(size));
            const AxisLines lines = everyInch(quilt);
            const AxisTable t = table(size);
            for (int at = (quilt - size) / 2; at <= quilt - size && at < quilt / 2; at += 5) {
                const auto first = windowAt(lines, t, Length::inches(at));
                ASSERT_TRUE(first);
                const auto chain = outwardFrom(lines, t, t, *first);
                EXPECT_EQ(static_cast<int>(chain.size()), byBreadth(quilt, size, at)) << at;
            }
            const auto fromEnd = outwardFrom(lines, t, t, lowEnd(lines, t));
            EXPECT_EQ(static_cast<int>(fromEnd.size()), byBreadth(quilt, size, {}));
        }
}

TEST(WindowAt, LosesNoRimWhereTheTopEndsOnTheTable) {
    const AxisLines lines = everyInch(70);
    const auto w = windowAt(lines, table(72), -1_in);
    ASSERT_TRUE(w);
    EXPECT_EQ(w->lo, 0u);
    EXPECT_EQ(w->hi, lines.last());
    EXPECT_TRUE(fits(lines, table(72)));
    EXPECT_TRUE(fits(everyInch(72), table(72)));
    EXPECT_FALSE(fits(everyInch(75), table(72)));
}

TEST(WindowAt, PullsInALastRow) {
    AxisTable t = table(72);
    t.row = 4_in;
    EXPECT_TRUE(fits(everyInch(76), t));
    EXPECT_TRUE(windowAt(everyInch(76), t, {})->pulled);
    EXPECT_FALSE(fits(everyInch(77), t));
}

// Against a wall the top has to end on the table with its overage, and what goes on past it takes
// the room of a roll.
TEST(WindowAt, KeepsClearOfWhatLiesRolledAgainstAWall) {
    AxisTable t = table(30);
    t.insetLo = 5_in;
    t.pastLo = 4_in;
    const AxisLines lines = everyInch(60);
    EXPECT_EQ(windowAt(lines, t, -4_in)->lo, 0u);
    EXPECT_EQ(lines.cuts[windowAt(lines, t, -3_in)->lo].at, 2_in);
    EXPECT_EQ(lines.cuts[windowAt(lines, t, 10_in)->lo].at, 15_in);
}

TEST(Anchor, HoldsOneRowAtLeast) {
    const AxisLines rows = axisLines({2_in, 18_in, 34_in}, 36_in, 16_in, {});
    EXPECT_EQ(anchorBelow(rows, table(30), 1), 8_in) << "the row beside the cut is 8 in away";
    EXPECT_EQ(anchorBelow(everyInch(40), table(30), 20), 6_in);
}

} // namespace
} // namespace bastewright
