#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/replan.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace bastewright {
namespace {

using made::Reporter;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

struct Table {
    Session session = made::smallSession();
    Plan plan = made::pinnedPlan();
    LiveState state;
    ReplanOptions options;

    explicit Table(const Reporter& r) {
        state = fold(plan, session.setting, r.events());
        options = replanNow(plan, session.setting, state, r.events(), r.nowMs());
    }
    Helper& helper(const std::string& name) {
        return *std::ranges::find(session.setting.helpers, name, &Helper::name);
    }
    Plan next() const { return replan(session, plan, state, options); }
};

// Pass 1 laid, A1 open by Ada a minute ago, B1 with Bo.
Reporter halfOpen() {
    Reporter r{0};
    r.start().wait(134).step("lay-backing").wait(134).step("lay-batting");
    r.wait(134).step("lay-top").wait(60).open("A1", "Ada");
    return r;
}

const Task& taskIn(const Plan& plan, const std::string& id) {
    return *std::ranges::find(plan.tasks, id, &Task::id);
}

TEST(Replan, WithNothingChangedChangesNothing) {
    const Table t{halfOpen()};
    const auto next = t.next();
    EXPECT_THAT(whatChanged(t.plan, next, t.state), IsEmpty());
    EXPECT_EQ(taskIn(next, "open-B1").people, std::vector<std::string>{"Bo"});
    EXPECT_EQ(taskIn(next, "open-A1").people, std::vector<std::string>{"Ada"});
    EXPECT_LE(taskIn(next, "open-A1").end, t.options.now);
}

TEST(Replan, WhoLeavesHandsTheirZonesToTheOthers) {
    Reporter r = halfOpen();
    r.person(EventKind::personOut, "Bo");
    Table t{r};
    t.helper("Cai").from = ClockTime{std::chrono::hours{18}}; // no help today
    const auto next = t.next();
    for (const auto& task : next.tasks)
        EXPECT_TRUE(t.state.doneTasks.contains(task.id) ||
                    std::ranges::count(task.people, "Bo") == 0)
            << task.id;
    const auto said = whatChanged(t.plan, next, t.state);
    EXPECT_THAT(said, Contains("Ada takes over placing of zones B1 and B2 from Bo."));
    EXPECT_THAT(said, Contains("Ada takes over closing of zones B1 and B2 from Bo."));
    EXPECT_THAT(said, Contains("Bo is no longer in the smoothing of pass 1."));
    EXPECT_THAT(said, Contains(HasSubstr("later.")));
    EXPECT_THAT(said, Contains(HasSubstr("The shift into pass 2 wants 2 people who lift, and one "
                                         "is left.")));
}

TEST(Replan, WhatIsInHandStaysAndItsTimeSoFarCounts) {
    const Table t{halfOpen()};
    // Bo has been at B1 for a minute of his 65 s, so a tenth (7 s) is still counted.
    EXPECT_EQ(t.options.inHand.at("open-B1"), Seconds{60});
    const auto next = t.next();
    EXPECT_EQ(taskIn(next, "open-B1").start, t.options.now);
    EXPECT_EQ(taskIn(next, "open-B1").end, t.options.now + Seconds{7});
    EXPECT_EQ(taskIn(next, "smooth-1").start, t.options.now + Seconds{7});
}

TEST(Replan, ALearntPaceLengthensWhatIsLeft) {
    Table t{halfOpen()};
    const auto before = t.next().finish;
    t.options.pace = {{"Ada", 0.5}, {"Bo", 0.5}};
    const auto next = t.next();
    EXPECT_GT(next.finish, before + Seconds{200});
    EXPECT_EQ((taskIn(next, "close-A2").end - taskIn(next, "close-A2").start), Seconds{115})
        << "10 pins of 5 s at half pace, and 15 s to settle at any";
    EXPECT_EQ(withLearntPaces(t.session, t.options).setting.helpers[0].pace, 0.5);
}

TEST(Replan, ALearntPaceStaysWithinWhatAFileHolds) {
    Table t{halfOpen()};
    t.session.setting.helpers[0].pace = 2;
    t.session.setting.helpers[1].pace = 0.2;
    t.options.pace = {{"Ada", 4}, {"Bo", 0.25}};
    const auto learnt = withLearntPaces(t.session, t.options);
    EXPECT_EQ(learnt.setting.helpers[0].pace, limits::kFastestPace);
    EXPECT_EQ(learnt.setting.helpers[1].pace, limits::kSlowestPace);
    EXPECT_TRUE(readSession(writeSession(learnt)).session);
}

TEST(Replan, SomebodyWhoComesLaterIsUsedFromThenOn) {
    Reporter r{0};
    r.start();
    Table t{r};
    t.state.present = {"Ada"};
    t.helper("Bo").from = ClockTime{std::chrono::hours{13} + std::chrono::minutes{10}};
    t.helper("Cai").from = t.helper("Bo").from;
    const auto next = t.next();
    bool helped = false;
    for (const auto& task : next.tasks)
        for (const auto& who : task.people) {
            EXPECT_TRUE(who == "Ada" || task.start >= Seconds{600}) << task.id;
            helped = helped || who != "Ada";
        }
    EXPECT_TRUE(helped);
}

TEST(Replan, WithNobodyThereTheWorkStaysInThePlanAndComesBackWithPeople) {
    Reporter r = halfOpen();
    r.person(EventKind::personOut, "Bo").person(EventKind::personOut, "Ada");
    Table t{r};
    t.helper("Cai").from.reset(); // did not come
    const auto empty = t.next();
    EXPECT_TRUE(anyStop(empty.findings));
    EXPECT_EQ(empty.tasks.size(), t.plan.tasks.size());
    EXPECT_THAT(whatChanged(t.plan, empty, t.state),
                Contains("Nobody has placing of zones B1 and B2, which were with Bo."));

    t.plan = empty;
    t.state.present = {"Ada", "Bo"};
    const auto again = t.next();
    EXPECT_FALSE(anyStop(again.findings));
    for (const auto& task : again.tasks)
        EXPECT_FALSE(task.people.empty()) << task.id;
}

TEST(Replan, WorkNobodyLeftCanDoIsSaidWithItsReason) {
    Table t{halfOpen()};
    for (auto& h : t.session.setting.helpers)
        h.closes = false;
    EXPECT_THAT(
        t.next().findings,
        Contains(Field(&Finding::text, HasSubstr("The closing of the pins of zones A1, B1, A2 and "
                                                 "B2 is left to nobody: nobody left closes"))));
    Table shortArms{halfOpen()};
    for (auto& h : shortArms.session.setting.helpers)
        h.reach = 5_in;
    EXPECT_THAT(shortArms.next().findings,
                Contains(Field(&Finding::text, HasSubstr("nobody left reaches all of it"))));
}

TEST(Replan, HoursPinsAndTablesThatNoLongerDoAreFindings) {
    Table t{halfOpen()};
    EXPECT_THAT(t.next().findings, IsEmpty());
    for (auto& h : t.session.setting.helpers)
        h.until = ClockTime{std::chrono::hours{13} + std::chrono::minutes{12}};
    t.session.setting.stash.pins = 25;
    t.plan.quilts[0].surface.tables = {Rect{0_in, 0_in, 52_in, 24_in}};
    t.session.setting.room.tables[0].width = 30_in;
    const auto next = t.next();
    const auto text = [](const char* part) {
        return Contains(Field(&Finding::text, HasSubstr(part)));
    };
    EXPECT_THAT(next.findings, text("past the hours of"));
    EXPECT_THAT(next.findings, text("30 pins are still to be placed, and 15 are left."));
    EXPECT_THAT(next.findings, text("tables that are not in the room"));

    // Once cured, a further re-plan says nothing of it any more.
    Table cured{halfOpen()};
    cured.plan.findings = next.findings;
    EXPECT_THAT(cured.next().findings, IsEmpty());
}

TEST(Replan, TheNewPlanGoesThroughTheEventsAndTheSessionGoesOn) {
    Reporter r = halfOpen();
    r.person(EventKind::personOut, "Bo");
    const Table t{r};
    r.plain(EventKind::replanned, writePlan(t.next())).wait(65).open("B1", "Ada").wait(70);
    r.step("smooth-1");
    const auto state = fold(t.plan, t.session.setting, r.events());
    EXPECT_THAT(state.ignored, IsEmpty());
    EXPECT_EQ(planInForce(t.plan, r.events()), t.next());
    EXPECT_THAT(state.doneTasks, Contains("open-B1"));
    EXPECT_THAT(state.doneTasks, Contains("open-A1")) << "done under the first plan";
}

} // namespace
} // namespace bastewright
