#include "planners/passes/holds.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;
using testing::ElementsAre;

constexpr Size kTop{88_in, 112_in}, kBacking{96_in, 120_in};
// Two tables end to end, the quilt's length along them, its middle on theirs.
constexpr Rect kTable{29_in, -16_in, 59_in, 128_in};

TEST(Overhang, IsMeasuredFromTheTableToTheLayer) {
    const PerSide<Length> over = overhang(kBacking, kTop, kTable);
    EXPECT_EQ(over.left, 33_in);
    EXPECT_EQ(over.right, 33_in);
    EXPECT_EQ(over.head, -12_in) << "ends on the table";
    EXPECT_EQ(over.foot, -12_in);
}

TEST(Spare, IsPerSideNotTotal) {
    const PerSide<Length> s = spare(kBacking, kTop);
    EXPECT_EQ(s.left, 4_in);
    EXPECT_EQ(s.head, 4_in);
}

TEST(Holds, ClampWhereBackingHangsAndTapeWhereItEnds) {
    const std::vector<Hold> all = holds(kBacking, kTop, kTable, false);
    ASSERT_EQ(all.size(), 4u);
    EXPECT_EQ(all[0].side, Side::left) << "long sides first";
    EXPECT_EQ(all[1].side, Side::right);
    for (const Hold& h : all) {
        SCOPED_TRACE(name(h.side));
        const bool longSide = h.side == Side::left || h.side == Side::right;
        EXPECT_EQ(h.kind, longSide ? Hold::Kind::clamp : Hold::Kind::tape);
        // Common practice: a clamp every 12-18 in, a 6 in piece of tape every 12 in.
        const Length along = longSide ? 120_in : 30_in;
        EXPECT_LE(along, h.count * (longSide ? 18_in : 12_in));
        EXPECT_EQ(h.length, longSide ? Length{} : h.count * 6_in);
        EXPECT_EQ(h.positions.size(), std::size_t(h.count));
    }
}

TEST(Holds, WorkFromTheMiddleOutward) {
    const Hold h = holds(kBacking, kTop, kTable, false).front();
    const Length middle = 56_in;
    for (std::size_t i = 1; i < h.positions.size(); ++i)
        EXPECT_GE(abs(h.positions[i] - middle), abs(h.positions[i - 1] - middle));
}

TEST(Holds, TheFloorTakesOnlyTape) {
    for (const Hold& h : holds(kBacking, kTop, {-4_in, -4_in, 92_in, 116_in}, true))
        EXPECT_EQ(h.kind, Hold::Kind::tape);
}

TEST(PassRolls, RollOnlyWhatHangsFar) {
    Job job;
    Stash stash;
    stash.clips = {{3_in, 8}};
    const std::vector<Roll> rolls = passRolls(job, stash, kBacking, kTop, kTable);
    ASSERT_EQ(rolls.size(), 2u);
    EXPECT_THAT((std::vector{rolls[0].side, rolls[1].side}), ElementsAre(Side::left, Side::right));
    EXPECT_EQ(rolls[0].rolled, 33_in);
    EXPECT_EQ(rolls[0].along, 120_in);
    EXPECT_EQ(rolls[0].clipHolds, 3_in);
    EXPECT_FALSE(rolls[0].folded);
}

TEST(PassRolls, FoldWhereNoClipHolds) {
    const std::vector<Roll> rolls = passRolls({}, {}, kBacking, kTop, kTable);
    ASSERT_FALSE(rolls.empty());
    EXPECT_TRUE(rolls[0].folded);
    EXPECT_EQ(rolls[0].clips, 0);
}

} // namespace
} // namespace bastewright
