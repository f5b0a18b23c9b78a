#include "session/ticks.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright {
namespace {

constexpr std::array kTicks{Tick::dotted, Tick::opened, Tick::closed};

TEST(Ticks, AreTheStepsOfAZoneInOrder) {
    for (const Way& way : allWays()) {
        std::vector<TaskKind> work;
        ZoneState state = ZoneState::waiting;
        for (const Tick tick : kTicks)
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
        EXPECT_EQ(workAt(Tick::pressed, way).has_value(), way.turnedFrom.has_value());
        EXPECT_EQ(stateBefore(Tick::pressed, way), ZoneState::closed);
    }
    EXPECT_EQ(stateAfter(Tick::pressed), ZoneState::pressedBack);
}

} // namespace
} // namespace bastewright
