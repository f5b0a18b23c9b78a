#include "session/ticks.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright {
namespace {

constexpr std::array kTicks{EventKind::zoneDotted, EventKind::zoneOpened, EventKind::zoneClosed};

TEST(Ticks, AreTheStepsOfAZoneInOrder) {
    for (const Way& way : allWays()) {
        std::vector<TaskKind> work;
        ZoneState state = ZoneState::waiting;
        for (const EventKind tick : kTicks)
            if (const auto kind = workAt(tick, way)) {
                EXPECT_EQ(tickAt(*kind), tick);
                EXPECT_EQ(callAt(tick, way), callOf(*kind));
                EXPECT_EQ(stateBefore(tick, way), state);
                state = stateAfter(tick);
                work.push_back(*kind);
            }
        EXPECT_EQ(work, way.zoneWork());
        EXPECT_EQ(firstTick(way), tickAt(work.front()));
        EXPECT_EQ(state, ZoneState::closed);
    }
}

TEST(Ticks, OnlyWhatIsTurnedIsFinishedFromTheBack) {
    for (const Way& way : allWays()) {
        EXPECT_EQ(workAt(EventKind::zonePressed, way).has_value(), way.turnedFrom.has_value());
        EXPECT_EQ(stateBefore(EventKind::zonePressed, way), ZoneState::closed);
    }
    EXPECT_EQ(stateAfter(EventKind::zonePressed), ZoneState::pressedBack);
}

TEST(Ticks, WhatIsNoTickIsNoWork) {
    for (const Way& way : allWays())
        EXPECT_FALSE(workAt(EventKind::note, way));
}

} // namespace
} // namespace bastewright
