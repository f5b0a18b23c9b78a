#include "planners/batting/join_layout.h"
#include "planners/batting/join_search.h"
#include "property/layers/dissections.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

/// The joining engine with nothing lost at a join, against published sets that leave no waste.
namespace bastewright::batting {
namespace {

using dissections::Dissection;
using dissections::Placed;

constexpr std::uint64_t kWork = 4'000'000'000;

JoinProblem problemOf(const Dissection& d) {
    JoinProblem p{{Length::inches(d.width), Length::inches(d.length)}, {}, false};
    for (const Placed& r : d.pieces)
        p.items.push_back({Length::inches(r.width), Length::inches(r.length)});
    return p;
}

/// True where straight cuts from edge to edge take a layout apart down to single pieces.
bool comesApart(std::vector<Placed> pieces) {
    if (pieces.size() <= 1)
        return true;
    for (const bool upright : {true, false}) {
        const auto lo = [&](const Placed& p) { return upright ? p.x : p.y; };
        const auto hi = [&](const Placed& p) { return upright ? p.x + p.width : p.y + p.length; };
        for (const Placed& edge : pieces) {
            const int at = hi(edge);
            if (std::ranges::any_of(pieces,
                                    [&](const Placed& p) { return lo(p) < at && at < hi(p); }))
                continue;
            std::vector<Placed> before, after;
            for (const Placed& p : pieces)
                (hi(p) <= at ? before : after).push_back(p);
            if (!after.empty())
                return comesApart(std::move(before)) && comesApart(std::move(after));
        }
    }
    return false;
}

bool isPlaced(const Dissection& d) {
    return d.pieces.front().x >= 0;
}

TEST(Dissections, AreWhatTheyClaim) {
    for (const auto* set : {&dissections::kSquared, &dissections::kHopperTurton})
        for (const Dissection& d : *set) {
            const int area =
                std::accumulate(d.pieces.begin(), d.pieces.end(), 0,
                                [](int sum, const Placed& p) { return sum + p.width * p.length; });
            EXPECT_EQ(area, d.width * d.length) << d.name;
            if (!isPlaced(d))
                continue;
            std::vector<int> cells(std::size_t(d.width * d.length));
            for (const Placed& p : d.pieces)
                for (int y = p.y; y < p.y + p.length; ++y)
                    for (int x = p.x; x < p.x + p.width; ++x)
                        ++cells[std::size_t(y * d.width + x)];
            EXPECT_TRUE(std::ranges::all_of(cells, [](int n) { return n == 1; })) << d.name;
            // A layout that comes apart by straight cuts is proof that the set can be joined.
            if (comesApart(d.pieces)) {
                EXPECT_TRUE(d.straightCuts) << d.name;
            }
        }
}

class Set : public testing::TestWithParam<Dissection> {};

TEST_P(Set, IsJoinedWhereStraightCutsCanAndOnlyThere) {
    const Dissection& d = GetParam();
    const JoinProblem problem = problemOf(d);
    JoinSearch search{problem, kWork};
    const int all = int(d.pieces.size());
    EXPECT_EQ(search.leastByArea(), all);
    const Possible possible = search.possible(all);
    EXPECT_EQ(possible, d.straightCuts ? Possible::yes : Possible::no) << d.name;
    if (possible != Possible::yes)
        return;
    // What it shows fills the rectangle with every piece once, unturned, and comes apart again.
    int shown = 0;
    std::size_t steps = 100'000;
    search.visitTrees(0, INT64_MAX, steps, [&](const JoinTree& tree, std::int64_t joins) {
        if (++shown > 20)
            return std::int64_t{0}; // enough

        const std::vector<Segment> none;
        const JoinLayout l = TreeLayouts{tree, problem.target, {}, none}.plain();
        std::vector<bool> used(d.pieces.size());
        std::vector<Placed> pieces;
        for (const JoinLayout::Piece& p : l.pieces) {
            const Placed& own = d.pieces[std::size_t(p.item)];
            EXPECT_FALSE(used[std::size_t(p.item)]);
            used[std::size_t(p.item)] = true;
            EXPECT_EQ(p.area.width(), Length::inches(own.width));
            EXPECT_EQ(p.area.length(), Length::inches(own.length));
            pieces.push_back({int(p.area.x0.in()), int(p.area.y0.in()), own.width, own.length});
        }
        EXPECT_EQ(pieces.size(), d.pieces.size());
        for (std::size_t i = 0; i < l.pieces.size(); ++i)
            for (std::size_t k = 0; k < i; ++k)
                EXPECT_FALSE(l.pieces[i].area.overlaps(l.pieces[k].area));
        EXPECT_TRUE(comesApart(pieces));
        EXPECT_EQ(l.joins.size(), d.pieces.size() - 1);
        EXPECT_EQ(l.joined, Length::nanometres(joins));
        return std::int64_t{INT64_MAX};
    });
    EXPECT_GT(shown, 0);
}

std::string nameOf(const testing::TestParamInfo<Dissection>& info) {
    std::string name = info.param.name;
    std::ranges::replace_if(
        name, [](char c) { return !std::isalnum(static_cast<unsigned char>(c)); }, '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Squared, Set, testing::ValuesIn(dissections::kSquared), nameOf);
INSTANTIATE_TEST_SUITE_P(HopperTurton, Set, testing::ValuesIn(dissections::kHopperTurton), nameOf);

} // namespace
} // namespace bastewright::batting
