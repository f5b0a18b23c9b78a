#include "planners/passes/passes.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

/// A quilt of 88 × 112 on two tables of 30 × 72.
struct Hall {
    Job job;
    Setting setting;

    Hall() {
        job.top.width = {88_in};
        job.top.length = {112_in};
        setting.room.tables = {{72_in, 30_in, 2}};
    }
    std::vector<PassChoice> ways() const {
        const Size top{88_in, 112_in}, backing{96_in, 120_in};
        return passChoices({job, setting, {top, top, backing}, 400},
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
        asking.job.basting.start = a.start == Basting::Start::besideMiddle ? a.start
                                   : a.offCentre != Vec{} ? Basting::Start::besideMiddle
                                                          : Basting::Start::centred;
        asking.job.basting.along = a.quiltLengthAlongLength ? Basting::Along::tableLength
                                                            : Basting::Along::tableWidth;
        asking.setting.room.together = {a.surfaceLength, a.surfaceWidth};
        EXPECT_EQ(asking.taken(), a);
        ++taken;
    }
    EXPECT_GT(taken, 6);
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
