#include "view/table/lane_stretches.h"

#include <gtest/gtest.h>

#include <deque>

using namespace bastewright;

namespace {

struct Lanes {
    std::deque<Task> tasks; // blocks point into it
    std::vector<LanesBoard::Block> blocks;

    void add(int lane, TaskKind kind, int pass, int minute, const std::string& zone = {}) {
        Task& task = tasks.emplace_back();
        task.kind = kind;
        task.pass = pass;
        task.zone = zone;
        task.start = Seconds{minute * 60};
        task.end = Seconds{minute * 60 + 50};
        blocks.push_back({&task, lane, false});
    }
};

} // namespace

TEST(LaneStretches, WhatIsDoneAtOneCallIsOne) {
    Lanes lanes;
    lanes.add(0, TaskKind::layBacking, 1, 0);
    lanes.add(0, TaskKind::layTop, 1, 1);
    for (int i = 1; i <= 4; ++i) {
        lanes.add(0, TaskKind::placeOpen, 1, 10 + i, "p1.A" + std::to_string(i));
        lanes.add(1, TaskKind::placeOpen, 1, 10 + i, "p1.B" + std::to_string(i));
    }
    lanes.add(0, TaskKind::placeOpen, 2, 30, "p2.A1");
    const auto all = stretchesOf(lanes.blocks, LaneGrain::calls);
    ASSERT_EQ(all.size(), 4u);
    EXPECT_EQ(all[0].call, Call::lay);
    EXPECT_EQ(all[0].pieces.size(), 2u);
    EXPECT_EQ(all[0].zones(), QString{});
    EXPECT_EQ(all[1].call, Call::pin);
    EXPECT_EQ(all[1].zones(), QStringLiteral("A1–A4"));
    EXPECT_EQ(all[1].start(), Seconds{11 * 60});
    EXPECT_EQ(all[1].end(), Seconds{14 * 60 + 50});
    EXPECT_EQ(all[2].zones(), QStringLiteral("A1")); // of the second pass
    EXPECT_EQ(all[3].lane(), 1);
    EXPECT_EQ(all[3].zones(), QStringLiteral("B1–B4"));
}

TEST(LaneStretches, FromAfarAPassIsOneAndSettingUpIsNotOfIt) {
    Lanes lanes;
    lanes.add(0, TaskKind::setUp, 1, 0);
    lanes.add(0, TaskKind::layBacking, 1, 5);
    lanes.add(0, TaskKind::placeOpen, 1, 6, "p1.A1");
    lanes.add(0, TaskKind::closePins, 1, 9, "p1.A1");
    lanes.add(0, TaskKind::shift, 2, 12);
    lanes.add(0, TaskKind::handOver, 2, 20);
    const auto all = stretchesOf(lanes.blocks, LaneGrain::passes);
    ASSERT_EQ(all.size(), 4u);
    EXPECT_FALSE(all[0].wholePass);
    EXPECT_TRUE(all[1].wholePass);
    EXPECT_EQ(all[1].pieces.size(), 3u);
    EXPECT_EQ(all[1].zones(), QStringLiteral("A1"));
    EXPECT_EQ(all[2].pieces.front()->task->pass, 2);
    EXPECT_EQ(all[3].call, Call::rollUp);
}

TEST(LaneStretches, AnotherCallBetweenPartsThem) {
    Lanes lanes;
    lanes.add(0, TaskKind::placeOpen, 1, 3, "p1.A1");
    lanes.add(0, TaskKind::smooth, 1, 4);
    lanes.add(0, TaskKind::placeOpen, 1, 5, "p1.A2");
    EXPECT_EQ(stretchesOf(lanes.blocks, LaneGrain::calls).size(), 3u);
    EXPECT_TRUE(stretchesOf({}, LaneGrain::calls).empty());
}

TEST(LaneStretches, ZonesThatDoNotFollowEachOtherAreListed) {
    Lanes lanes;
    for (const char* zone : {"p1.A1", "p1.A2", "p1.A4", "p1.B1", "p1.B1", "odd"})
        lanes.add(0, TaskKind::closePins, 1, int(lanes.tasks.size()), zone);
    EXPECT_EQ(stretchesOf(lanes.blocks, LaneGrain::calls).front().zones(),
              QStringLiteral("A1–A2, A4, B1, odd"));
}
