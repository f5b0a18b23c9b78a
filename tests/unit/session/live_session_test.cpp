#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/event_json.h"
#include "session/live_session.h"
#include "unit/session/table_plan.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using made::Reporter;

TEST(LiveSession, AddingOneByOneEqualsTheFoldOfAll) {
    Session changed = made::smallSession();
    changed.setting.stash.pins = 500;
    Plan next = made::pinnedPlan();
    next.finish = Seconds{2000};
    Reporter r;
    r.start().allOfPassOne().undo("e10").step("check-1").undo("e8").undo("e13").release(1);
    r.settingChanged(changed);
    r.replanned(next).step("shift-2").undo("e17").open("A2", "Ada");

    LiveSession live{made::smallSession(), made::pinnedPlan()};
    for (std::size_t i = 0; i < r.events().size(); ++i) {
        live.add(r.events()[i]);
        const auto prefix = std::span{r.events()}.first(i + 1);
        ASSERT_EQ(live.state(), fold(made::pinnedPlan(), made::smallSetting(), prefix)) << i;
        ASSERT_EQ(live.plan(), planInForce(made::pinnedPlan(), prefix)) << i;
        ASSERT_EQ(live.session(), sessionInForce(made::smallSession(), made::pinnedPlan(), prefix))
            << i;
        for (const auto& [place, zone] : live.state().zones)
            ASSERT_EQ(live.nextTick(place.first, place.second),
                      nextTick(live.plan(), live.state(), place.first, place.second))
                << i << ", zone " << place.second;
        ASSERT_EQ(live.releaseBlockedBy(0, 1), releaseBlockedBy(live.plan(), live.state(), 0, 1))
            << i;
    }
    const LiveSession again{made::smallSession(), made::pinnedPlan(), r.events()};
    EXPECT_EQ(again.state(), live.state());
    EXPECT_EQ(again.plan(), live.plan());
}

TEST(LiveSession, ANewPlanThatWasRefusedStaysRefusedAfterAnUndo) {
    Session spoiled = made::smallSession();
    spoiled.setting.helpers[0].pace = 17.6; // more than a file holds
    Plan next = made::pinnedPlan();
    next.finish = Seconds{2000};
    Reporter r;
    r.start()
        .tell(readEvent(R"({"id":"x","kind":"replanned","session":)" + writeSession(spoiled) +
                        ",\"plan\":" + writePlan(next) + "}")
                  .value()
                  .what)
        .open("A1", "Ada")
        .undo("e3");
    LiveSession live{made::smallSession(), made::pinnedPlan()};
    for (const Event& e : r.events())
        live.add(e);
    EXPECT_EQ(live.plan(), made::pinnedPlan());
    EXPECT_EQ(live.state(), fold(made::pinnedPlan(), made::smallSetting(), r.events()));
    EXPECT_EQ(live.state().ignored.size(), 1u);
}

TEST(LiveSession, SaysWhyAnEventWasIgnoredAndTakesAnIdOnce) {
    Reporter r;
    r.start().close("A1", "Ada");
    LiveSession live{made::smallSession(), made::pinnedPlan()};
    EXPECT_EQ(live.add(r.events()[0]), "");
    EXPECT_NE(live.add(r.events()[1]), "");
    EXPECT_EQ(live.add(r.events()[0]), "Event e1 is stored already.");
    EXPECT_EQ(live.events().size(), 2u);
    EXPECT_EQ(live.add({"u", 0, happened::Undone{"nobody"}}),
              "There is no event nobody to take back.");
    ASSERT_TRUE(live.find("e2"));
    EXPECT_EQ(*live.find("e2"), r.events()[1]);
    EXPECT_FALSE(live.find("e3"));
}

TEST(LiveSession, CanBeMovedWhileItRuns) {
    Reporter r;
    r.start().open("A1", "Ada");
    LiveSession first{made::smallSession(), made::pinnedPlan(), r.events()};
    LiveSession second = std::move(first);
    EXPECT_EQ(second.add({"c", r.nowMs(), happened::ZoneTick{Tick::closed, 0, "A1", "Ada"}}), "");
    EXPECT_EQ(second.state().zones.at({0, "A1"}).state, ZoneState::closed);
}

} // namespace
} // namespace bastewright
