#include "checker/ways/seen_way.h"
#include "plan/call.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright::check {
namespace {

TEST(SeenWays, EveryWayIsSeenOnce) {
    for (const auto with :
         {Basting::With::pins, Basting::With::dots, Basting::With::thread, Basting::With::spray}) {
        Job job;
        job.basting.with = with;
        EXPECT_EQ(std::ranges::count(seenWays(), with, &SeenWay::with), 1);
        EXPECT_EQ(seenWay(job).with, with);
    }
}

TEST(SeenWays, EveryKindOfWorkAtAZoneIsSeenByOneWay) {
    for (int k = 0; k <= int(TaskKind::handOver); ++k) {
        const TaskKind kind{k};
        std::ptrdiff_t seen = 0;
        for (const SeenWay& way : seenWays())
            seen += std::ranges::count_if(way.tasks, [&](const SeenTask& t) {
                return t.kind == kind && t.of == SeenTask::Of::zone;
            });
        EXPECT_EQ(seen, isOfZone(kind) ? 1 : 0) << name(kind);
        if (isOfZone(kind)) {
            ASSERT_NE(seenTask(kind), nullptr) << name(kind);
            EXPECT_GT(seenTask(kind)->secondsAPoint, 0) << name(kind);
        }
    }
}

TEST(SeenWays, TasksLieBetweenClampingAndLookingUnderneath) {
    for (const SeenWay& way : seenWays())
        for (const SeenTask& task : way.tasks) {
            EXPECT_GE(task.stage, 7) << name(task.kind);
            EXPECT_LE(task.stage, 16) << name(task.kind);
        }
}

} // namespace
} // namespace bastewright::check
