#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/event_json.h"
#include "session/live_state.h"
#include "session/pins.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

using made::Reporter;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::IsSupersetOf;
using ::testing::Not;
using ::testing::UnorderedElementsAre;

ZoneState zone(const LiveState& s, const std::string& id) {
    return s.zones.at({0, id}).state;
}

TEST(Fold, BeforeTheStartNothingIsDoneAndNobodyIsThere) {
    const auto s = folded(Reporter{});
    EXPECT_FALSE(s.started);
    EXPECT_THAT(s.present, IsEmpty());
    EXPECT_THAT(s.currentPass, ElementsAre(1));
    EXPECT_EQ(progress(s), 0);
}

TEST(Fold, AtTheStartThoseWhoseHoursHaveBegunAreAtTheTable) {
    Reporter r;
    r.start();
    EXPECT_THAT(folded(r).present, UnorderedElementsAre("Ada", "Bo"));
    r.in("Cai").out("Bo");
    EXPECT_THAT(folded(r).present, UnorderedElementsAre("Ada", "Cai"));
}

TEST(Fold, AWholeAfternoonWithPins) {
    Reporter r;
    r.start().allOfPassOne();
    auto s = folded(r);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_THAT(s.cautions, IsEmpty());
    EXPECT_EQ(progress(s), 0.5);
    EXPECT_EQ(s.pinsOut, 20);
    EXPECT_THAT(releaseBlockedBy(made::pinnedPlan(), s, 0, 1), IsEmpty());

    r.release(1);
    EXPECT_THAT(folded(r).currentPass, ElementsAre(2));
    r.step("shift-2").open("A2", "Ada").open("B2", "Bo").step("smooth-2");
    r.close("A2", "Ada").close("B2", "Bo").step("check-2").release(2).step("hand-over");
    r.tell(happened::Ended{});
    s = folded(r);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_THAT(s.cautions, IsEmpty());
    EXPECT_EQ(progress(s), 1);
    EXPECT_THAT(s.currentPass, ElementsAre(2)) << "stays at the last";
    EXPECT_TRUE(s.released.contains({0, 2}));
    EXPECT_TRUE(s.ended);
    EXPECT_EQ(s.doneTasks.size(), made::pinnedPlan().tasks.size());
    EXPECT_EQ(s.zones.at({0, "A1"}).openedBy, "Ada");
    EXPECT_EQ(s.zones.at({0, "B2"}).closedBy, "Bo");
}

TEST(Fold, AZoneTickImpliesItsTasksAndTheLayersUnderIt) {
    Reporter r;
    r.start().open("A1", "Ada");
    const auto s = folded(r);
    EXPECT_THAT(s.doneTasks,
                UnorderedElementsAre("lay-backing", "lay-batting", "lay-top", "open-A1"));
    EXPECT_THAT(s.cautions, IsEmpty());
}

TEST(Fold, ClosingBeforeTheSmoothingWasTickedIsTakenButSaidAloud) {
    Reporter r;
    r.start().open("A1", "Ada").open("B1", "Bo").close("A1", "Ada");
    const auto s = folded(r);
    EXPECT_EQ(zone(s, "A1"), ZoneState::closed);
    EXPECT_THAT(s.cautions, ElementsAre("Zone A1 was closed before the smoothing of pass 1 was "
                                        "ticked."));
    EXPECT_THAT(s.doneTasks, Not(Contains("smooth-1")));
}

struct Misfit {
    const char* what;
    What event;
    const char* reason;
};

What stored(const char* text) {
    return readEvent(text).value().what;
}

TEST(Fold, WhatDoesNotFitChangesNothingAndSaysWhy) {
    using namespace happened;
    const auto tick = [](Tick kind, const char* zone) {
        return ZoneTick{.kind = kind, .zone = zone};
    };
    const Misfit rows[]{
        {"unknown zone", tick(Tick::opened, "Z9"), "no zone Z9"},
        {"closing before opening", tick(Tick::closed, "A1"), "Zone A1 is waiting"},
        {"dots on pins", tick(Tick::dotted, "A1"), "is pinned, not dotted"},
        {"later pass", tick(Tick::opened, "A2"), "not on the table now"},
        {"unknown quilt", ZoneTick{Tick::opened, 7, "A1"}, "in quilt 8"},
        {"unknown task", Step{.task = "sing"}, "no task sing"},
        {"zone work as a step", Step{.task = "open-A1"}, "tick the zone"},
        {"smoothing too early", Step{.task = "smooth-1"}, "wait for the zones A1 and B1"},
        {"a later pass's step", Step{.task = "shift-2"}, "belongs to pass 2"},
        {"release too early", Released{.pass = 1}, "2 zones of pass 1 are not done"},
        {"release of another", Released{.pass = 2}, "Pass 2 is not on the table"},
        {"start twice", Started{}, "started already"},
        {"unknown person", Presence{Presence::Kind::in}, "among the helpers"},
        {"absent person", Presence{Presence::Kind::out}, "not at the table"},
        {"no pins", Pins{Pins::Kind::found}, "cannot be 0"},
        {"no pins back", Pins{Pins::Kind::back}, "cannot be 0"},
        {"empty note", happened::Note{}, "note is empty"},
        {"resume", Resumed{}, "not paused"},
        {"bad plan", stored(R"({"id":"misfit","kind":"replanned","plan":{"tasks":1}})"),
         "The new plan cannot be read"},
        {"bad old plan", stored(R"({"id":"misfit","kind":"replanned","text":""})"),
         "The new plan cannot be read"},
        {"bad setting", stored(R"({"id":"misfit","kind":"setting-changed","session":[]})"),
         "The changed setting cannot be read"},
        {"leaving out nothing", LeftOut{.pass = 1, .zone = "Z9"}, "no zone Z9"},
    };
    Reporter r;
    r.start();
    const auto before = folded(r);
    for (const auto& row : rows) {
        auto events = r.events();
        events.push_back({"misfit", 0, row.event});
        auto after = fold(made::pinnedPlan(), made::smallSetting(), events);
        ASSERT_EQ(after.ignored.size(), 1u) << row.what;
        EXPECT_THAT(after.ignored.front(), HasSubstr(row.reason)) << row.what;
        after.ignored.clear();
        EXPECT_EQ(after, before) << row.what;
    }
}

TEST(Fold, NothingIsReportedBeforeTheStartOrTickedAfterTheEnd) {
    Reporter early;
    early.open("A1", "Ada").start();
    auto s = folded(early);
    EXPECT_THAT(s.ignored, ElementsAre(HasSubstr("before the session has started")));
    EXPECT_EQ(zone(s, "A1"), ZoneState::waiting);

    Reporter late;
    late.start().tell(happened::Ended{}).open("A1", "Ada").back(5);
    s = folded(late);
    EXPECT_THAT(s.ignored, ElementsAre(HasSubstr("The session has ended")));
    EXPECT_EQ(s.pinsBack, 5) << "pins come back long after";
}

TEST(Fold, APassIsHeldUntilItsUndersideIsChecked) {
    Reporter r;
    r.start().open("A1", "Ada").open("B1", "Bo").step("smooth-1");
    r.close("A1", "Ada").close("B1", "Bo").release(1);
    const auto s = folded(r);
    EXPECT_THAT(s.currentPass, ElementsAre(1));
    EXPECT_THAT(s.ignored, ElementsAre("The check underneath of pass 1 has not been ticked."));
}

TEST(Fold, DotsGoThroughLowerUpperPressedAndCooled) {
    const Plan plan = made::dottedPlan();
    Reporter r;
    r.start().tick(Tick::opened, "A1", "Ada"); // the lower face comes first
    EXPECT_THAT(folded(r, plan).ignored, ElementsAre(HasSubstr("Zone A1 is waiting")));

    Reporter ok;
    ok.start().tick(Tick::dotted, "A1", "Ada").tick(Tick::dotted, "B1", "Bo");
    auto s = folded(ok, plan);
    EXPECT_EQ(zone(s, "A1"), ZoneState::dotted);
    EXPECT_THAT(s.doneTasks, IsSupersetOf({"lay-top", "fold-back", "lower-A1", "lower-B1"}));
    ok.tick(Tick::opened, "A1", "Ada").tick(Tick::opened, "B1", "Bo");
    ok.tick(Tick::closed, "A1", "Ada").tick(Tick::closed, "B1", "Ada");
    s = folded(ok, plan);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_EQ(s.pinsOut, 0) << "dots are not pins";
    EXPECT_EQ(progress(s), 1);
    EXPECT_THAT(releaseBlockedBy(plan, s, 0, 1),
                ElementsAre(HasSubstr("cooling of pass 1"), HasSubstr("underneath")));
    ok.step("cool").step("check").release(1);
    EXPECT_THAT(folded(ok, plan).ignored, IsEmpty());
}

TEST(Fold, ThreadIsTickedOnceAndSewnAgainWhereItHasTo) {
    const Plan plan = made::sewnPlan();
    Reporter r;
    r.start().tick(Tick::opened, "A1", "Ada");
    EXPECT_THAT(folded(r, plan).ignored, ElementsAre("Zone A1 is sewn in one step."));

    Reporter ok;
    ok.start().step("smooth").tick(Tick::closed, "A1", "Ada");
    auto s = folded(ok, plan);
    EXPECT_EQ(zone(s, "A1"), ZoneState::closed);
    EXPECT_EQ(nextTick(plan, s, 0, "B1"), Tick::closed);
    EXPECT_EQ(s.pinsOut, 0) << "stitches are not pins";
    ok.tick(Tick::closed, "A1", "Ada");
    EXPECT_THAT(folded(ok, plan).ignored,
                ElementsAre("Zone A1 is stitched, so it cannot be stitched now."));
    ok.tell(happened::ZoneAgain{.zone = "A1"});
    s = folded(ok, plan);
    EXPECT_EQ(zone(s, "A1"), ZoneState::waiting);
    EXPECT_EQ(nextTick(plan, s, 0, "A1"), Tick::closed);
    ok.tick(Tick::closed, "A1", "Ada").tick(Tick::closed, "B1", "Bo").step("check").release(1);
    s = folded(ok, plan);
    EXPECT_EQ(s.ignored.size(), 1u);
    EXPECT_EQ(progress(s), 1);
}

TEST(Fold, SprayIsTickedOnceThenSmoothedAndLeftAlone) {
    const Plan plan = made::sprayedPlan();
    Reporter r;
    r.start().tick(Tick::opened, "A1", "Ada");
    EXPECT_THAT(folded(r, plan).ignored, ElementsAre("Zone A1 is sprayed in one step."));

    Reporter ok;
    ok.start().tick(Tick::closed, "A1", "Ada").tick(Tick::closed, "B1", "Bo");
    auto s = folded(ok, plan);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_EQ(zone(s, "A1"), ZoneState::closed);
    EXPECT_EQ(s.pinsOut, 0) << "patches are not pins";
    EXPECT_EQ(progress(s), 1);
    EXPECT_THAT(releaseBlockedBy(plan, s, 0, 1),
                ElementsAre(HasSubstr("smoothing of pass 1"), HasSubstr("waiting of pass 1"),
                            HasSubstr("underneath")));
    ok.step("smooth").step("settle").step("check").release(1);
    EXPECT_THAT(folded(ok, plan).ignored, IsEmpty());
}

TEST(Fold, ThickBattingIsPressedOnceMoreFromTheBack) {
    const Plan plan = made::dottedPlan(true);
    Reporter r;
    r.start();
    for (const auto kind : {Tick::dotted, Tick::opened, Tick::closed})
        for (const char* z : {"A1", "B1"})
            r.tick(kind, z, "Ada");
    auto s = folded(r, plan);
    EXPECT_THAT(s.doneTasks, Not(Contains("back-A1"))) << "the first pressing is not the second";
    EXPECT_EQ(nextTick(plan, s, 0, "A1"), Tick::pressed);
    r.step("cool").step("check").release(1).step("turn").tick(Tick::pressed, "A1", "Ada");
    s = folded(r, plan);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_EQ(zone(s, "A1"), ZoneState::pressedBack);
    EXPECT_THAT(s.doneTasks, Contains("back-A1"));
    EXPECT_FALSE(nextTick(plan, s, 0, "A1"));
}

TEST(Fold, PressesFromTheBackAreKnownWhereTheTurningCameSoonerThanPlanned) {
    Plan plan = made::dottedPlan(true);
    // As planned anew: what is done ends now, what is left begins now.
    const auto at = [&plan](const char* id) {
        return std::ranges::find(plan.tasks, id, &Task::id);
    };
    std::rotate(at("turn"), at("back-A1"), at("cool-back"));
    Reporter r;
    r.start();
    for (const auto kind : {Tick::dotted, Tick::opened, Tick::closed})
        for (const char* z : {"A1", "B1"})
            r.tick(kind, z, "Ada");
    r.step("cool").step("check").release(1).step("turn");
    EXPECT_EQ(nextTick(plan, folded(r, plan), 0, "A1"), Tick::pressed);
    r.tick(Tick::pressed, "A1", "Ada").tick(Tick::pressed, "B1", "Ada").step("cool-back");
    const auto s = folded(r, plan);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_THAT(s.doneTasks, IsSupersetOf({"press-A1", "back-A1", "back-B1", "cool-back"}));
}

TEST(Fold, AZoneIsOpenedOnceByWhoeverTicksIt) {
    Reporter r;
    r.start().open("A1", "Ada").open("A1", "Bo");
    const auto s = folded(r);
    EXPECT_THAT(s.ignored, ElementsAre("Zone A1 is open, so it cannot be opened now."));
    EXPECT_EQ(zone(s, "A1"), ZoneState::open);
    EXPECT_EQ(s.zones.at({0, "A1"}).openedBy, "Ada");
    EXPECT_EQ(s.pinsOut, 10) << "the zone's pins, once";
}

TEST(Fold, AZoneWithoutPointsHoldsNobodyUp) {
    Plan plan = made::pinnedPlan();
    plan.quilts[0].zones[1].points.clear();
    std::erase_if(plan.tasks, [](const Task& t) { return t.zone == "B1"; });
    Reporter r;
    r.start().open("A1", "Ada").step("smooth-1").close("A1", "Ada").step("check-1").release(1);
    const auto s = folded(r, plan);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_THAT(s.currentPass, ElementsAre(2));
}

TEST(Fold, ANewPlanTakesOverAndKeepsWhatIsDone) {
    Plan next = made::pinnedPlan();
    for (auto& t : next.tasks)
        if (t.id == "open-B1")
            t.people = {"Ada"};
    Reporter r;
    r.start().open("A1", "Ada").replanned(next).open("B1", "Ada");
    const auto s = folded(r);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_EQ(zone(s, "A1"), ZoneState::open);
    EXPECT_EQ(planInForce(made::pinnedPlan(), r.events()).tasks, next.tasks);

    Plan without = next;
    std::erase_if(without.quilts[0].zones, [](const Zone& z) { return z.id == "A1"; });
    r.replanned(without);
    EXPECT_THAT(folded(r).ignored, ElementsAre(HasSubstr("leaves out zone A1")));
}

TEST(Fold, AChangedSettingBringsNewPeopleAndTakesOthersAway) {
    Session changed = made::smallSession();
    changed.setting.helpers.erase(changed.setting.helpers.begin() + 1);
    changed.setting.helpers.emplace_back().name = "Dot";
    changed.setting.stash.pins = 250;
    Reporter r;
    r.start().settingChanged(changed);
    r.in("Dot");
    const auto s = folded(r);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_THAT(s.present, UnorderedElementsAre("Ada", "Dot"));
    const auto now = sessionInForce(made::smallSession(), made::pinnedPlan(), r.events());
    EXPECT_EQ(now.setting.stash.pins, 250);
}

TEST(Fold, AZoneOfALaterPassCanBeLeftOutAlone) {
    Reporter r;
    r.start();
    const happened::LeftOut a2{.zone = "A2"};
    r.tell(a2);
    const auto s = folded(r);
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_EQ(s.setAside, (std::set<std::pair<int, std::string>>{{0, "A2"}}));
    EXPECT_TRUE(s.doneTasks.contains("open-A2"));
    EXPECT_FALSE(s.doneTasks.contains("open-B2"));
    EXPECT_EQ(countPins(made::pinnedPlan(), made::smallSetting(), s).toPlace, 30);
    r.tell(a2);
    EXPECT_THAT(folded(r).ignored, ElementsAre(HasSubstr("left out already")));
}

TEST(NextTick, IsWhatATapOnAZoneWouldReport) {
    const Plan plan = made::pinnedPlan();
    Reporter r;
    EXPECT_FALSE(nextTick(plan, folded(r), 0, "A1")) << "not started";
    r.start();
    EXPECT_EQ(nextTick(plan, folded(r), 0, "A1"), Tick::opened);
    EXPECT_FALSE(nextTick(plan, folded(r), 0, "A2")) << "its pass is not on the table";
    EXPECT_FALSE(nextTick(plan, folded(r), 0, "Z9"));
    r.open("A1", "Ada");
    EXPECT_EQ(nextTick(plan, folded(r), 0, "A1"), Tick::closed);
    r.close("A1", "Ada");
    EXPECT_FALSE(nextTick(plan, folded(r), 0, "A1"));
}

TEST(Progress, OfAPlanWithoutZonesIsWhole) {
    EXPECT_EQ(progress(fold({}, {}, {})), 1);
}

} // namespace
} // namespace bastewright
