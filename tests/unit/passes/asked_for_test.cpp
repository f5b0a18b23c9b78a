#include "planners/passes/passes.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

/// A quilt of 88 × 112 on two tables of 30 × 72.
struct Hall {
    Job job;
    Setting setting;
    std::vector<PlacedPoint> points;

    Hall() {
        job.top.width = {88_in};
        job.top.length = {112_in};
        setting.room.tables = {{72_in, 30_in, 2, {}}};
        for (Length y = 2_in; y < 112_in; y += 4_in)
            for (Length x = 2_in; x < 88_in; x += 4_in)
                points.push_back({{x, y}, 0});
    }
    std::vector<PassChoice> ways() const {
        const Size top{88_in, 112_in}, backing{96_in, 120_in};
        return passChoices({job, setting, {top, top, backing}, points},
                           arrangements(setting.room.tables));
    }
    Alternative taken() const { return ways().front().summary; }
};

TEST(AskedFor, EveryStartLyingAndRectangleThatWorksIsTakenWhenAskedFor) {
    const Hall hall;
    int taken = 0;
    for (const PassChoice& way : hall.ways()) {
        if (!way.summary.workable)
            continue;
        Hall asking = hall;
        const Alternative& a = way.summary;
        asking.job.basting.start = a.start;
        asking.job.basting.along =
            a.quiltLengthAlongLength ? Basting::Along::tableLength : Basting::Along::tableWidth;
        asking.setting.room.together = {a.surfaceLength, a.surfaceWidth};
        const Alternative first = asking.taken();
        EXPECT_EQ(first.passes, a.passes);
        EXPECT_EQ(first.start, a.start);
        EXPECT_EQ(first.quiltLengthAlongLength, a.quiltLengthAlongLength);
        EXPECT_EQ(first.surfaceLength, a.surfaceLength);
        EXPECT_EQ(first.surfaceWidth, a.surfaceWidth);
        ++taken;
    }
    EXPECT_GT(taken, 9);
}

// 88 × 112 on two tables of 30 × 72 end to end: five passes from the middle, four beside it.
TEST(AskedFor, BesideTheMiddleIsTakenWhereItSavesAPass) {
    Hall hall;
    EXPECT_EQ(hall.taken().start, Basting::Start::besideMiddle);
    EXPECT_EQ(hall.taken().passes, 4);
    hall.job.basting.start = Basting::Start::centred;
    EXPECT_EQ(hall.taken().start, Basting::Start::centred);
    EXPECT_EQ(hall.taken().passes, 5);
}

TEST(AskedFor, FromOneEndIsOfferedAndTakenOnlyWhenAskedFor) {
    Hall hall;
    bool offered = false;
    for (const PassChoice& way : hall.ways())
        offered = offered || (way.start == Basting::Start::oneEnd && way.summary.workable);
    EXPECT_TRUE(offered);
    EXPECT_NE(hall.taken().start, Basting::Start::oneEnd);
    hall.job.basting.start = Basting::Start::oneEnd;
    EXPECT_EQ(hall.taken().start, Basting::Start::oneEnd);
}

TEST(AskedFor, WhatCannotBeHadGivesWayToTheQuickestThatWorks) {
    Hall hall;
    const Alternative quickest = hall.taken();
    hall.setting.room.together = {100_in, 100_in};
    const PassChoice first = hall.ways().front();
    EXPECT_FALSE(first.asked);
    EXPECT_EQ(first.summary, quickest);
}

TEST(AskedFor, TheFloorHasNothingToPushTogether) {
    Hall hall;
    hall.setting.room.tables.clear();
    hall.setting.room.together = {144_in, 30_in};
    hall.job.basting.along = Basting::Along::tableLength;
    EXPECT_TRUE(isAskedFor(hall.job, hall.setting.room, {}));
}

} // namespace
} // namespace bastewright
