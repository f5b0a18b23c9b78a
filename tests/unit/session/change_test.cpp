#include "plan/call.h"
#include "planners/crew/crew.h"
#include "planners/crew/zone_points.h"
#include "session/change.h"
#include "session/live_session.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <ostream>
#include <stdexcept>

namespace bastewright {
namespace {

using Kind = Change::Kind;
using made::Reporter;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

/// The hand-made quilt, planned: Ada and Bo have a place each, A and B, in both passes.
Plan planned(const Session& session = made::smallSession()) {
    Plan plan = made::pinnedPlan();
    const auto points = pointsOfZones(plan.quilts);
    auto crew = planCrew(session, plan.quilts, points);
    plan.tasks = std::move(crew.tasks);
    plan.breaks = std::move(crew.breaks);
    plan.finish = crew.finish;
    plan.range = crew.range;
    plan.finishBound = crew.bound;
    plan.findings = std::move(crew.findings);
    return plan;
}

const Task& taskIn(const Plan& plan, const std::string& id) {
    const auto at = std::ranges::find(plan.tasks, id, &Task::id);
    if (at == plan.tasks.end())
        throw std::invalid_argument{"no task " + id};
    return *at;
}

/// Pass 1 laid and clamped, each step when it was planned, A1 open by Ada, B1 with Bo; Cai comes at
/// 14:00.
Reporter halfOpen(const Plan& plan) {
    Reporter r{0};
    r.start();
    for (const Task& t : plan.tasks)
        if (t.pass == 1 && (t.kind == TaskKind::setUp || callOf(t.kind) == Call::lay ||
                            callOf(t.kind) == Call::clamp))
            r.until(t.end).step(t.id);
    return r.until(taskIn(plan, "q1.p1.A1.place-open").end).open("p1.A1", "Ada");
}

struct Running {
    Plan plan = planned();
    Reporter told = halfOpen(plan);
    LiveSession live{made::smallSession(), plan, told.events()};

    Proposal proposed(const Change& change) const {
        return propose(live.session(), live.plan(), live.events(), live.state(), change,
                       told.nowMs());
    }
    Sentence store(What what) {
        return live.add(
            {"s" + std::to_string(live.events().size()), told.nowMs(), std::move(what)});
    }
    void take(const Proposal& p) {
        for (const auto& f : p.facts)
            EXPECT_EQ(store(f), "");
        EXPECT_EQ(store(acceptance(p)), "");
    }
};

TEST(Change, WhatIsProposedIsWhatComesAndOneUndoTakesThePlanBack) {
    Running r;
    const auto p = r.proposed({.kind = Kind::personOut, .person = "Bo"});
    ASSERT_EQ(p.refused, "");
    EXPECT_GT(p.finishAfter, p.finishBefore);
    EXPECT_THAT(p.changes, Not(IsEmpty()));
    r.take(p);
    EXPECT_EQ(r.live.plan(), p.plan);
    EXPECT_EQ(r.live.session(), p.session);
    EXPECT_THAT(r.live.state().ignored, IsEmpty());
    EXPECT_THAT(r.live.state().present, Not(Contains("Bo")));
    EXPECT_EQ(r.live.state().zones.at({0, "p1.A1"}).state, ZoneState::open) << "what is done stays";

    EXPECT_EQ(r.store(happened::Undone{r.live.state().undoable.back()}), "");
    EXPECT_EQ(r.live.plan(), r.plan);
    EXPECT_EQ(r.live.session(), made::smallSession());
    EXPECT_THAT(r.live.state().present, Not(Contains("Bo"))) << "Bo has gone all the same";
}

TEST(Change, TheOldPlanIsKeptByStoringTheFactsAlone) {
    Running r;
    const auto p = r.proposed({.kind = Kind::personOut, .person = "Bo"});
    for (const auto& f : p.facts)
        EXPECT_EQ(r.store(f), "");
    EXPECT_EQ(r.live.plan(), r.plan);
    EXPECT_THAT(r.live.state().present, Not(Contains("Bo")));
}

TEST(Change, AZoneIsHandedOverAndStaysThere) {
    Running r;
    const auto p = r.proposed({.kind = Kind::handOver, .person = "Ada", .job = 0, .zone = "p2.B1"});
    ASSERT_EQ(p.refused, "");
    for (const char* id : {"q1.p2.B1.place-open", "q1.p2.B1.close-pins"})
        EXPECT_EQ(taskIn(p.plan, id).people, std::vector<std::string>{"Ada"}) << id;
    EXPECT_THAT(p.said, Contains(HasSubstr("Ada closes B1 at 1")));
    r.take(p);
    // A later change keeps it in her hands.
    const auto later = r.proposed({.kind = Kind::personIn, .person = "Cai"});
    ASSERT_EQ(later.refused, "");
    EXPECT_EQ(taskIn(later.plan, "q1.p2.B1.place-open").people, std::vector<std::string>{"Ada"});
    // Given back it is anybody's again.
    const auto back = r.proposed({.kind = Kind::handOver, .person = "", .job = 0, .zone = "p2.B1"});
    EXPECT_EQ(back.refused, "");
    EXPECT_THAT(back.session.jobs[0].handed, IsEmpty());
}

struct Refusal {
    const char* why;
    Change change;
    void (*before)(Session&);
    const char* says;
    friend void PrintTo(const Refusal& r, std::ostream* out) { *out << r.why; }
};

class CannotBe : public ::testing::TestWithParam<Refusal> {};

TEST_P(CannotBe, IsSaidInOneSentence) {
    const Plan plan = planned();
    const auto told = halfOpen(plan);
    auto session = made::smallSession();
    GetParam().before(session);
    const LiveSession live{session, plan, told.events()};
    const auto p = propose(live.session(), live.plan(), live.events(), live.state(),
                           GetParam().change, told.nowMs());
    EXPECT_THAT(p.refused, HasSubstr(GetParam().says)) << GetParam().why;
    EXPECT_THAT(p.refused.english(), ::testing::EndsWith("."));
    EXPECT_THAT(p.facts, IsEmpty());
}

void asItIs(Session&) {}

INSTANTIATE_TEST_SUITE_P(
    Change, CannotBe,
    ::testing::Values(
        Refusal{"does not close",
                {Kind::handOver, "Ada", "", 0, "p2.B1", 0},
                [](Session& s) { s.setting.helpers[0].closes = false; },
                "does not close pins"},
        Refusal{"out of reach",
                {Kind::handOver, "Ada", "", 0, "p2.B1", 0},
                [](Session& s) { s.setting.helpers[0].reach = 5_in; },
                "does not reach all of zone B1"},
        Refusal{"not there yet",
                {Kind::handOver, "Eve", "", 0, "p2.B1", 0},
                asItIs,
                "Nobody called Eve"},
        Refusal{"hours",
                {Kind::handOver, "Ada", "", 0, "p2.B1", 0},
                [](Session& s) {
                    s.setting.helpers[0].until =
                        ClockTime{std::chrono::hours{13} + std::chrono::minutes{32}};
                },
                "handed to Ada, who is not there for it"},
        Refusal{"no such zone",
                {Kind::handOver, "Ada", "", 0, "p1.Z9", 0},
                asItIs,
                "The plan has no zone Z9"},
        Refusal{"gone already",
                {Kind::personOut, "Cai", "", 0, "", 0},
                asItIs,
                "Cai is not at the table"},
        Refusal{"here already",
                {Kind::personIn, "Ada", "", 0, "", 0},
                asItIs,
                "Ada is at the table already"},
        Refusal{"swapped for somebody present",
                {Kind::swap, "Bo", "Ada", 0, "", 0},
                asItIs,
                "Ada is at the table already"},
        Refusal{"no iron", {Kind::irons, "", "", 0, "", -1}, asItIs, "no iron to take away"},
        Refusal{"open zones",
                {Kind::abandon, "", "", 0, "", 0},
                asItIs,
                "Close what is open first: A1"},
        Refusal{"not paused", {Kind::goOn, "", "", 0, "", 0}, asItIs, "not paused"}));

TEST(Change, WhoHasToLeaveAtAnHourHasNoWorkAfterIt) {
    Running r;
    const auto until = ClockTime{std::chrono::hours{13} + std::chrono::minutes{35}};
    const auto p = r.proposed({.kind = Kind::hours, .person = "Bo", .until = until});
    ASSERT_EQ(p.refused, "");
    EXPECT_EQ(p.session.setting.helpers[1].until, until);
    for (const auto& t : p.plan.tasks)
        if (!r.live.state().doneTasks.contains(t.id) && std::ranges::count(t.people, "Bo") > 0) {
            EXPECT_LE(t.end, Seconds{35 * 60}) << t.id;
        }
    r.take(p);
    EXPECT_EQ(r.live.session().setting.helpers[1].until, until);
    EXPECT_THAT(r.proposed({.kind = Kind::hours, .person = "Bo", .until = until}).refused.english(),
                HasSubstr("already"));
    EXPECT_THAT(r.proposed({.kind = Kind::hours, .person = "Nobody"}).refused.english(),
                HasSubstr("among the helpers"));
}

TEST(Change, SomebodyTakesAnothersPlace) {
    Running r;
    const auto p = r.proposed({.kind = Kind::swap, .person = "Bo", .other = "Cai"});
    ASSERT_EQ(p.refused, "");
    for (const auto& t : p.plan.tasks)
        EXPECT_TRUE(r.live.state().doneTasks.contains(t.id) ||
                    std::ranges::count(t.people, "Bo") == 0)
            << t.id;
    r.take(p);
    EXPECT_THAT(r.live.state().present, Contains("Cai"));
}

TEST(Change, AGuestIsPlannedFor) {
    Running r;
    const auto p = r.proposed({.kind = Kind::guest, .person = "Guest"});
    ASSERT_EQ(p.refused, "");
    r.take(p);
    EXPECT_THAT(r.live.state().present, Contains("Guest"));
    EXPECT_EQ(r.live.session().setting.helpers.back().name, "Guest");
    EXPECT_NE(r.proposed({.kind = Kind::guest, .person = "Guest"}).refused, "");
}

TEST(Change, PinsThatDoNotLastAreSaidWithZoneAndTime) {
    Running r;
    const auto p = r.proposed({.kind = Kind::pins, .count = -85});
    ASSERT_EQ(p.refused, "");
    EXPECT_THAT(p.said, Contains(HasSubstr("last until zone B1")));
    EXPECT_THAT(p.said, Contains(HasSubstr("fetch 25 more")));
    EXPECT_THAT(r.proposed({.kind = Kind::pins, .count = 5}).said,
                Contains(HasSubstr("do for all that is left")));
}

TEST(Change, ThePassIsGivenUpAndTheNextGoesOn) {
    Running r;
    EXPECT_EQ(r.store(happened::Undone{r.told.last()}), "") << "A1 is waiting again";
    const auto p = r.proposed({.kind = Kind::abandon});
    ASSERT_EQ(p.refused, "");
    EXPECT_LT(p.finishAfter, p.finishBefore);
    r.take(p);
    EXPECT_EQ(r.live.state().setAside.size(), 2u);
    EXPECT_EQ(nextTick(r.live.plan(), r.live.state(), 0, "p1.A1"), std::nullopt);
    const auto blocked = releaseBlockedBy(r.live.plan(), r.live.state(), 0, 1);
    EXPECT_EQ(blocked.size(), 2u) << "smoothing and the underside are still asked for";
}

TEST(Change, OvernightTheRestIsPlannedFromNow) {
    Running r;
    EXPECT_EQ(r.store(happened::Paused{}), "");
    r.told.wait(18 * 3600);
    const auto p = r.proposed({.kind = Kind::goOn});
    ASSERT_EQ(p.refused, "");
    for (const auto& t : p.plan.tasks)
        EXPECT_TRUE(r.live.state().doneTasks.contains(t.id) || t.start >= Seconds{18 * 3600})
            << t.id;
    for (const auto& change : p.changes)
        EXPECT_THAT(change.english(), Not(HasSubstr(" h "))) << "a night makes nothing later";
    r.take(p);
    EXPECT_FALSE(r.live.state().paused);
}

Session withBoUntil(const char* clock) {
    Session session = made::smallSession();
    session.setting.helpers[1].until = *parseClock(clock);
    return session;
}

bool says(const Sentences& all, const char* what) {
    return std::ranges::any_of(
        all, [&](const Sentence& s) { return s.english().find(what) != std::string::npos; });
}

bool worksIn(const Task& t, const char* who) {
    return std::ranges::find(t.people, who) != t.people.end();
}

// Bo leaves at the hour that was said, however late it begins; that is said before it does.
TEST(LateStart, HoursAreTimesOfTheDay) {
    const Session session = withBoUntil("14:05");
    const Plan plan = planned(session);
    const ClockTime late = *parseClock("13:40");
    const Proposal p = proposeStart(session, plan, late);
    EXPECT_EQ(p.session.setting.start, late);
    for (const Task& t : p.plan.tasks)
        EXPECT_TRUE(!worksIn(t, "Bo") || t.end <= Seconds{25 * 60}) << t.id;
    EXPECT_TRUE(says(p.said, "40 min later than planned"));
    EXPECT_TRUE(says(p.said, "Bo leaves at 14:05 as agreed."));
}

TEST(LateStart, WhoHasComeMeanwhileIsAtTheTable) {
    const Session session = made::smallSession(); // Cai comes at 14:00
    const Plan plan = planned(session);
    const Proposal p = proposeStart(session, plan, *parseClock("14:05"));
    ASSERT_EQ(p.facts.size(), 1U);
    LiveSession live{session, plan, Reporter{0}.start().events()};
    EXPECT_FALSE(live.state().present.contains("Cai"));
    EXPECT_EQ(live.add({"came", 0, p.facts.front()}), "");
    EXPECT_EQ(live.add({"taken", 0, acceptance(p)}), "");
    EXPECT_TRUE(live.state().present.contains("Cai"));
    EXPECT_EQ(live.session().setting.start, *parseClock("14:05"));
    EXPECT_TRUE(std::ranges::any_of(p.plan.tasks, [](const Task& t) { return worksIn(t, "Cai"); }));
}

TEST(LateStart, WhoWasToLeaveBeforeIsNotPlannedFor) {
    const Session session = withBoUntil("13:30");
    const Proposal p = proposeStart(session, planned(session), *parseClock("13:45"));
    EXPECT_TRUE(std::ranges::none_of(p.plan.tasks, [](const Task& t) { return worksIn(t, "Bo"); }));
    EXPECT_TRUE(says(p.said, "Bo was to leave at 13:30 and is not planned for."));
}

TEST(LateStart, OnTimeNothingIsOther) {
    const Session session = made::smallSession();
    const Plan plan = planned(session);
    const Proposal p = proposeStart(session, plan, session.setting.start);
    EXPECT_EQ(p.plan.tasks, plan.tasks);
    EXPECT_THAT(p.facts, IsEmpty());
    EXPECT_THAT(p.said, IsEmpty());
}

/// The time of day that the first sentence tells, in minutes.
int minutesSaid(const Proposal& p) {
    const std::string text = p.said.empty() ? std::string{} : p.said.front().english();
    const auto at = text.find(", at ");
    const auto time = parseClock(at == std::string::npos ? "" : text.substr(at + 5, 5));
    if (!time)
        throw std::invalid_argument{"no time in: " + text};
    return static_cast<int>(time->sinceMidnight.count());
}

/// From the beginning until Bo leaves.
Seconds hoursLeft(const Session& session, const Proposal& p) {
    return session.setting.helpers[1].until->sinceMidnight - p.session.setting.start.sinceMidnight;
}

// Planned for 13:00 and begun later, without 'Begin now'.
TEST(LateSession, TimesThatAreSaidCountFromWhenItBegan) {
    Running r;
    Change change{.kind = Kind::pins, .count = -85};
    const int asPlanned = minutesSaid(r.proposed(change));
    change.began = *parseClock("13:10");
    EXPECT_EQ(minutesSaid(r.proposed(change)), asPlanned + 10);
    change.began = *parseClock("12:45");
    EXPECT_EQ(minutesSaid(r.proposed(change)), asPlanned - 15);
    change.began = *parseClock("21:00"); // as good as another day
    EXPECT_EQ(minutesSaid(r.proposed(change)), asPlanned + 8 * 60);
}

TEST(LateSession, HoursAreTimesOfTheDayUnlessItIsAnotherDay) {
    const Session session = withBoUntil("14:30");
    const Plan plan = planned(session);
    const Reporter told = halfOpen(plan);
    const LiveSession live{session, plan, told.events()};
    const auto leavesAfter = [&](const char* began) {
        Change change{.kind = Kind::planAgain};
        change.began = *parseClock(began);
        const auto p =
            propose(live.session(), live.plan(), live.events(), live.state(), change, told.nowMs());
        EXPECT_EQ(p.refused, "");
        for (const Task& t : p.plan.tasks)
            EXPECT_TRUE(live.state().doneTasks.contains(t.id) || !worksIn(t, "Bo") ||
                        t.end <= hoursLeft(session, p))
                << began << ": " << t.id;
        return hoursLeft(session, p);
    };
    EXPECT_EQ(leavesAfter("13:00"), Seconds{90 * 60});
    EXPECT_EQ(leavesAfter("13:30"), Seconds{60 * 60});
    EXPECT_EQ(leavesAfter("12:30"), Seconds{120 * 60});
    EXPECT_EQ(leavesAfter("20:00"), Seconds{90 * 60});
    EXPECT_EQ(leavesAfter("08:00"), Seconds{90 * 60});
}

TEST(HandOver, BeforeTheSessionIsPlannedAroundAndRefusedWhereItCannotBe) {
    const auto session = made::smallSession();
    const auto plan = planned();
    const auto p = proposeHandOver(session, plan, 0, "p2.B1", "Ada");
    ASSERT_EQ(p.refused, "");
    EXPECT_EQ(p.session.jobs[0].handed, (std::vector<HandedZone>{{"p2.B1", "Ada"}}));
    for (const auto& t : p.plan.tasks)
        EXPECT_TRUE(t.zone != "p2.B1" || t.people == std::vector<std::string>{"Ada"}) << t.id;
    EXPECT_GE(p.finishAfter, p.finishBefore);
    EXPECT_THAT(proposeHandOver(session, plan, 0, "p2.B1", "Zoe").refused,
                HasSubstr("Nobody called Zoe"));
}

} // namespace
} // namespace bastewright
