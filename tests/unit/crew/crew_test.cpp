#include "unit/crew/made_session.h"
#include "unit/crew/rules_oracle.h"

#include <gmock/gmock.h>

#include <algorithm>

using namespace bastewright;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

namespace {

made::Afternoon oneQuilt(int people, const made::Shape& shape = {}) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(people);
    made::addQuilt(a.session, a.quilts, shape);
    return a;
}

std::vector<Finding> stops(const CrewPlan& plan) {
    std::vector<Finding> out;
    for (const Finding& f : plan.findings)
        if (f.level == Finding::Level::stop)
            out.push_back(f);
    return out;
}

TEST(Crew, FourPeopleBasteOneQuiltByTheRules) {
    const auto a = oneQuilt(4);
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    EXPECT_THAT(stops(plan), IsEmpty());
    EXPECT_GT(plan.finish, Seconds{0});
}

TEST(Crew, OnePersonIsPlannedForAndTold) {
    const auto a = oneQuilt(1);
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    ASSERT_FALSE(plan.findings.empty());
    EXPECT_THAT(plan.findings.front().text, HasSubstr("alone"));
}

TEST(Crew, WithoutNamesOneHelperIsAssumed) {
    const auto a = oneQuilt(0);
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    EXPECT_EQ(plan.findings.front().level, Finding::Level::note);
    EXPECT_EQ(plan.tasks.front().people.front(), "Helper 1");
}

TEST(Crew, WhoKeepsToASideWorksZonesFromThereOnly) {
    for (const Side side : kSides) {
        auto a = oneQuilt(3);
        a.session.setting.helpers[1].side = side;
        const std::string& who = a.session.setting.helpers[1].name;
        const CrewPlan plan = planCrew(a.session, a.quilts);
        EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
        EXPECT_THAT(stops(plan), IsEmpty());
        int zones = 0;
        for (const Task& t : plan.tasks)
            if (!t.zone.empty() && t.people == std::vector{who}) {
                EXPECT_EQ(t.places.front().side, side) << t.id;
                ++zones;
            }
        EXPECT_GT(zones, 0) << "the " << name(side) << " is worked from";
    }
}

TEST(Crew, AZoneNobodyReachesStopsWithTheReachThatWouldDo) {
    // Two rows of zones on a table 64 deep: the far pins lie 30 in from the nearest edge.
    auto a = oneQuilt(3, {.freshLength = 60});
    const CrewPlan plan = planCrew(a.session, a.quilts);
    ASSERT_FALSE(stops(plan).empty());
    EXPECT_THAT(stops(plan).front().text, HasSubstr("nobody reaches"));
    EXPECT_THAT(stops(plan).front().cure, HasSubstr("reaches 30 1/8"));
    a.session.setting.helpers[1].reach = Length::nearestInches(30.125);
    EXPECT_THAT(stops(planCrew(a.session, a.quilts)), IsEmpty());
}

TEST(Crew, AQuiltWithoutANameIsSpokenOfAllTheSame) {
    auto a = oneQuilt(3, {.freshLength = 60});
    a.session.jobs[0].name.clear();
    a.quilts[0].name.clear();
    a.session.jobs[0].handed = {{"Z9", "Ada"}};
    const CrewPlan plan = planCrew(a.session, a.quilts);
    ASSERT_FALSE(stops(plan).empty());
    EXPECT_THAT(stops(plan).front().text.english(), StartsWith("Quilt, pass 1: nobody reaches"));
    const auto handed = std::ranges::find(plan.findings, "/handed", &Finding::field);
    ASSERT_NE(handed, plan.findings.end());
    EXPECT_THAT(handed->text, HasSubstr("Zone Z9 of the quilt was handed to Ada"));
}

TEST(Crew, SomebodyMustCloseWithinReach) {
    auto a = oneQuilt(2);
    for (Helper& h : a.session.setting.helpers)
        h.closes = false;
    ASSERT_FALSE(stops(planCrew(a.session, a.quilts)).empty());
    EXPECT_THAT(stops(planCrew(a.session, a.quilts)).front().text, HasSubstr("closes pins"));
}

TEST(Crew, DotsNeedAnIronAndSomebodyToHoldIt) {
    auto a = oneQuilt(3, {.dots = true});
    EXPECT_THAT(stops(planCrew(a.session, a.quilts)).front().text, HasSubstr("no iron"));
    a.session.setting.room.irons = 1;
    const CrewPlan good = planCrew(a.session, a.quilts);
    EXPECT_THAT(stops(good), IsEmpty());
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, good), IsEmpty());
    for (Helper& h : a.session.setting.helpers)
        h.irons = false;
    EXPECT_THAT(stops(planCrew(a.session, a.quilts)).front().text, HasSubstr("nobody may iron"));
}

TEST(Crew, HoursTooShortSayByHowMuchAndWhoWouldHaveToStay) {
    auto a = oneQuilt(2);
    const CrewPlan open = planCrew(a.session, a.quilts);
    for (Helper& h : a.session.setting.helpers)
        h.until = after(a.session.setting.start, Seconds{30 * 60});
    const CrewPlan plan = planCrew(a.session, a.quilts);
    ASSERT_FALSE(stops(plan).empty());
    EXPECT_THAT(stops(plan).front().text, HasSubstr("hours"));
    EXPECT_THAT(stops(plan).front().cure, HasSubstr("until"));
    EXPECT_GE(plan.finish, open.finish);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
}

TEST(Crew, WhoLeavesEarlyIsReplacedInTime) {
    auto a = oneQuilt(4);
    a.session.setting.helpers[2].until = after(a.session.setting.start, Seconds{45 * 60});
    a.session.setting.helpers[3].from = after(a.session.setting.start, Seconds{20 * 60});
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_THAT(stops(plan), IsEmpty());
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
}

TEST(Crew, TooFewWhoLiftIsAWarning) {
    auto a = oneQuilt(3);
    for (Helper& h : a.session.setting.helpers)
        h.lifts = h.name == "Ada";
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_THAT(stops(plan), IsEmpty());
    ASSERT_FALSE(plan.findings.empty());
    EXPECT_EQ(plan.findings.front().level, Finding::Level::warn);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
}

TEST(Crew, QuiltsShareASurfaceOneAfterAnotherAndDifferentSurfacesRunSideBySide) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(8);
    for (int q = 0; q < 4; ++q)
        made::addQuilt(a.session, a.quilts, {.across = 1, .surface = 1 + q % 2});
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    Seconds secondStarts{9999999};
    for (const Task& t : plan.tasks)
        if (t.job == 1)
            secondStarts = std::min(secondStarts, t.start);
    EXPECT_EQ(secondStarts, Seconds{0});
}

} // namespace
