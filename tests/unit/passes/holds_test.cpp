#include "planners/passes/holds.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;
using ::testing::ElementsAre;

constexpr Size kTop{88_in, 112_in}, kBacking{96_in, 120_in};
// Two tables end to end, the quilt's length along them, its middle on theirs.
constexpr Rect kTable{29_in, -16_in, 59_in, 128_in};
constexpr Rect kAll{{}, {}, 88_in, 112_in};

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
    const std::vector<Hold> all = holds(kBacking, kTop, kTable, kAll, {}, false, Unit::inch);
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
    const Hold h = holds(kBacking, kTop, kTable, kAll, {}, false, Unit::inch).front();
    const Length middle = 56_in;
    for (std::size_t i = 1; i < h.positions.size(); ++i)
        EXPECT_GE(abs(h.positions[i] - middle), abs(h.positions[i - 1] - middle));
}

// What is basted holds by itself: the new area is held, and 6 in of what is basted beside it.
TEST(Holds, LieAlongTheNewArea) {
    const Rect fresh{31_in, 60_in, 57_in, 112_in};
    for (const Hold& h : holds(kBacking, kTop, kTable, fresh, {}, false, Unit::inch))
        for (const Length at : h.positions)
            if (!isAcross(h.side)) {
                EXPECT_GE(at, 54_in);
                EXPECT_LE(at, 116_in) << "to the end of the cloth";
            }
}

TEST(Holds, TheFloorTakesOnlyTape) {
    for (const Hold& h :
         holds(kBacking, kTop, {-4_in, -4_in, 92_in, 116_in}, kAll, {}, true, Unit::inch))
        EXPECT_EQ(h.kind, Hold::Kind::tape);
}

// Two people who face each other set one number at the same moment: middles of the long sides, of
// the short sides, then outward in turn.
TEST(Holds, ThatFaceEachOtherShareANumber) {
    const std::vector<Hold> all = holds(kBacking, kTop, kTable, kAll, {}, false, Unit::inch);
    ASSERT_EQ(all.size(), 4u);
    EXPECT_EQ(all[0].numbers, all[1].numbers);
    EXPECT_EQ(all[2].numbers, all[3].numbers);
    EXPECT_THAT(all[0].numbers, ElementsAre(1, 3, 5, 7, 9, 11, 13));
    EXPECT_THAT(all[2].numbers, ElementsAre(2, 4, 6));
    EXPECT_EQ(all[0].apart, 17_in) << "120 in with 7 clamps: said in whole inches";
}

// Whoever has holds 7 and 9 has them in every pass: what a pass leaves out on other sides takes no
// number away.
TEST(Holds, KeepTheirNumberWhereOthersAreLeftOut) {
    const Rect narrow{29_in, {}, 41_in, 112_in};
    const std::vector<Hold> all = holds(kBacking, kTop, kTable, narrow, {}, false, Unit::inch);
    EXPECT_THAT(all[0].numbers, ElementsAre(1, 3, 5, 7, 9, 11, 13));
    EXPECT_THAT(all[2].numbers, ElementsAre(2, 4));
}

TEST(Holds, AreNoneWhereTheRestLiesRolledAgainstAWall) {
    PerSide<Beyond> beyond;
    beyond.left = Beyond::onTable;
    for (const Hold& h : holds(kBacking, kTop, kTable, kAll, beyond, false, Unit::inch))
        EXPECT_NE(h.side, Side::left);
}

BeyondInput hanging(Length top) {
    BeyondInput in;
    in.top.left = top;
    in.backing.left = top + 4_in;
    return in;
}

// Tables are about 30 in high (ITTF Laws 2.1: 76 cm): what hangs lower would lie on the floor.
TEST(Beyond, HangsOrRestsOnSomething) {
    EXPECT_EQ(beyond(hanging(20_in)).left, Beyond::hangs);
    EXPECT_EQ(beyond(hanging(20_in)).right, Beyond::nothing);
    BeyondInput far = hanging(40_in);
    EXPECT_EQ(beyond(far).left, Beyond::chairs);
    far.spareTable = true;
    EXPECT_EQ(beyond(far).left, Beyond::spareTable);
    far.rolled = true;
    EXPECT_EQ(beyond(far).left, Beyond::rolled);
    far.walls = {Side::left};
    EXPECT_EQ(beyond(far).left, Beyond::onTable);
    far.floor = true;
    EXPECT_EQ(beyond(far).left, Beyond::nothing);
}

Pass rolledPass() {
    Pass pass;
    pass.table = kTable;
    pass.beyond.left = pass.beyond.right = Beyond::rolled;
    return pass;
}

TEST(PassRolls, AreAsLongAsTheCloth) {
    Job job;
    Stash stash;
    stash.clips = {{3_in, 8}};
    const std::vector<Roll> rolls = passRolls(job, stash, kBacking, kTop, rolledPass());
    ASSERT_EQ(rolls.size(), 2u);
    EXPECT_THAT((std::vector{rolls[0].side, rolls[1].side}), ElementsAre(Side::left, Side::right));
    EXPECT_EQ(rolls[0].rolled, 33_in);
    EXPECT_EQ(rolls[0].along, 120_in);
    EXPECT_EQ(rolls[0].clipHolds, 3_in);
    EXPECT_FALSE(rolls[0].folded);
}

TEST(PassRolls, WhatHangsIsNotRolled) {
    Pass pass = rolledPass();
    pass.beyond.left = Beyond::hangs;
    pass.beyond.right = Beyond::chairs;
    EXPECT_TRUE(passRolls({}, {}, kBacking, kTop, pass).empty());
}

TEST(PassRolls, FoldWhereNoClipHolds) {
    const std::vector<Roll> rolls = passRolls({}, {}, kBacking, kTop, rolledPass());
    ASSERT_FALSE(rolls.empty());
    EXPECT_TRUE(rolls[0].folded);
    EXPECT_EQ(rolls[0].clips, 0);
}

TEST(MachineRolls, AskForNoClipThatIsNotSold) {
    Job job;
    job.batting.thickness = 25_mm;
    for (const Roll& r : machineRolls(job, {}, kBacking)) {
        EXPECT_GT(r.diameter, 4_in);
        EXPECT_TRUE(r.folded);
        EXPECT_EQ(r.clips, 0);
    }
    job.batting.thickness = 3_mm;
    for (const Roll& r : machineRolls(job, {}, kBacking))
        EXPECT_GT(r.clips, 0);
}

} // namespace
} // namespace bastewright
