#include "planners/surface/arrangement.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>
#include <ostream>
#include <set>

namespace bastewright {
namespace {

using namespace literals;
using testing::UnorderedElementsAre;

std::vector<std::string> described(const std::vector<Table>& tables) {
    std::vector<std::string> out;
    for (const Arrangement& a : arrangements(tables))
        out.push_back(format(a.length, Unit::inch, false) + "x" +
                      format(a.width, Unit::inch, false) + " " + a.name.english());
    return out;
}

TEST(Arrangements, OneTable) {
    EXPECT_THAT(described({{72_in, 30_in, 1}}), UnorderedElementsAre("72x30 1 table"));
}

TEST(Arrangements, TwoTablesEndToEndAndSideBySide) {
    EXPECT_THAT(described({{72_in, 30_in, 2}}),
                UnorderedElementsAre("72x30 1 table", "144x30 2 tables end to end",
                                     "72x60 2 tables side by side"));
}

TEST(Arrangements, UnequalTablesJoinWhereSidesMatch) {
    EXPECT_THAT(
        described({{72_in, 30_in, 1}, {48_in, 30_in, 1}}),
        UnorderedElementsAre("72x30 1 table", "48x30 1 table", "120x30 2 tables pushed together"));
}

TEST(Arrangements, NoTablesMakeNoSurface) {
    EXPECT_TRUE(arrangements({}).empty());
}

TEST(Arrangements, FourTablesAlsoMakeABlock) {
    const auto all = arrangements({{72_in, 30_in, 4}});
    const auto block = std::ranges::find_if(
        all, [](const Arrangement& a) { return a.length == 144_in && a.width == 60_in; });
    ASSERT_NE(block, all.end());
    EXPECT_EQ(block->tables.size(), 4u);
    EXPECT_EQ(block->name, "4 tables, 2 end to end by 2 side by side");
}

// Two tables laid lengthways against two turned a quarter: 30 + 30 wide is as deep as 60 long.
TEST(Arrangements, MixesTurnedTables) {
    const auto all = arrangements({{60_in, 30_in, 3}});
    EXPECT_TRUE(std::ranges::any_of(
        all, [](const Arrangement& a) { return a.length == 90_in && a.width == 60_in; }));
}

struct Kinds {
    std::vector<Table> tables;
};
void PrintTo(const Kinds& kinds, std::ostream* out) {
    for (const Table& t : kinds.tables)
        *out << (&t == kinds.tables.data() ? "" : ", ") << t.count << " of " << t.length.in()
             << " x " << t.width.in();
}
class EveryArrangement : public testing::TestWithParam<Kinds> {};

TEST_P(EveryArrangement, IsFilledByWholeTablesOnHand) {
    for (const Arrangement& a : arrangements(GetParam().tables)) {
        SCOPED_TRACE(a.name);
        EXPECT_GE(a.length, a.width);
        double area = 0;
        for (std::size_t i = 0; i < a.tables.size(); ++i) {
            area += areaSquareInches(a.tables[i]);
            EXPECT_TRUE((Rect{{}, {}, a.length, a.width}.contains(a.tables[i])));
            for (std::size_t k = i + 1; k < a.tables.size(); ++k)
                EXPECT_FALSE(a.tables[i].overlaps(a.tables[k]));
        }
        EXPECT_DOUBLE_EQ(area, a.length.in() * a.width.in());
        ASSERT_EQ(a.used.size(), GetParam().tables.size());
        for (std::size_t i = 0; i < a.used.size(); ++i)
            EXPECT_LE(a.used[i], GetParam().tables[i].count);
        EXPECT_EQ(std::size_t(std::accumulate(a.used.begin(), a.used.end(), 0)), a.tables.size());
        EXPECT_LE(a.tables.size(), std::size_t(kMostTablesTogether));
    }
}

TEST_P(EveryArrangement, ComesOnce) {
    std::set<std::pair<Length, Length>> sizes;
    for (const Arrangement& a : arrangements(GetParam().tables))
        EXPECT_TRUE(sizes.insert({a.length, a.width}).second);
}

INSTANTIATE_TEST_SUITE_P(
    Rooms, EveryArrangement,
    testing::Values(Kinds{{{72_in, 30_in, 2}}}, Kinds{{{72_in, 30_in, 6}}},
                    Kinds{{{72_in, 30_in, 2}, {48_in, 24_in, 2}}},
                    Kinds{{{60_in, 30_in, 4}, {30_in, 30_in, 2}}},
                    Kinds{{{72_in, 30_in, 1}, {72_in, 30_in, 2}, {96_in, 30_in, 1}}},
                    Kinds{{{72_in, 30_in, 12}}}));

TEST(Joints, LieWhereTablesTouch) {
    EXPECT_THAT(jointsBetween({{{}, {}, 72_in, 30_in}, {72_in, {}, 144_in, 30_in}}),
                testing::ElementsAre(Segment{{72_in, {}}, {72_in, 30_in}}));
    EXPECT_TRUE(jointsBetween({{{}, {}, 72_in, 30_in}}).empty());
}

} // namespace
} // namespace bastewright
