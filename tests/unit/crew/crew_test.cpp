#include "plan/call.h"
#include "plan/find.h"
#include "unit/crew/reported.h"
#include "unit/crew/rules_oracle.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

using namespace bastewright;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

namespace {

made::Afternoon oneQuilt(int people, const made::Shape& shape = {}) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(people);
    made::addQuilt(a, shape);
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
    auto a = oneQuilt(4);
    const CrewPlan plan = made::plan(a);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    EXPECT_THAT(stops(plan), IsEmpty());
    EXPECT_GT(plan.finish, Seconds{0});
}

TEST(Crew, OnePersonIsPlannedForAndTold) {
    auto a = oneQuilt(1);
    const CrewPlan plan = made::plan(a);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    ASSERT_FALSE(plan.findings.empty());
    EXPECT_THAT(plan.findings.front().text, HasSubstr("alone"));
}

TEST(Crew, WithoutNamesOneHelperIsAssumed) {
    auto a = oneQuilt(0);
    const CrewPlan plan = made::plan(a);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    EXPECT_EQ(plan.findings.front().level, Finding::Level::note);
    EXPECT_EQ(plan.tasks.front().people.front(), "Helper 1");
}

// Who leaves early in a pass has no place in it that others work from.
TEST(Crew, NobodyWhoHasLeftKeepsAPlace) {
    int leaving = 0;
    for (int minutes = 20; minutes <= 150; minutes += 2) {
        auto a = oneQuilt(4);
        auto& people = a.session.setting.helpers;
        for (const std::size_t who : {1u, 2u})
            people[who].until = ClockTime{a.session.setting.start.sinceMidnight +
                                          std::chrono::minutes{minutes + 20 * int(who)}};
        const CrewPlan plan = made::plan(a);
        EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
        for (const Pass& p : a.quilts.front().passes)
            for (const Stretch& s : p.stretches)
                EXPECT_TRUE(std::ranges::any_of(plan.tasks,
                                                [&](const Task& t) {
                                                    return t.pass == p.number &&
                                                           t.people == std::vector{s.person} &&
                                                           std::string{zonePlace(t.zone)} ==
                                                               s.place;
                                                }))
                    << minutes << ": " << s.person << ", pass " << p.number;
        leaving += a.quilts.front().passes.back().stretches.size() < 4 ? 1 : 0;
    }
    EXPECT_GT(leaving, 5);
}

TEST(Crew, WhoKeepsToASideWorksZonesFromThereOnly) {
    for (const Side side : kSides) {
        auto a = oneQuilt(3);
        a.session.setting.helpers[1].side = side;
        const std::string& who = a.session.setting.helpers[1].name;
        const CrewPlan plan = made::plan(a);
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
    // On a table 74 deep and wide the middle pins lie 36 in from the nearest edge; with leaning
    // everybody gets to 31.
    auto a = oneQuilt(3, {.freshWidth = 70, .freshLength = 70});
    const CrewPlan plan = made::plan(a);
    ASSERT_FALSE(stops(plan).empty());
    EXPECT_THAT(stops(plan).front().text, HasSubstr("nobody reaches"));
    EXPECT_THAT(stops(plan).front().cure, HasSubstr("reaches 36"));
    for (Helper& h : a.session.setting.helpers)
        h.reach = Length::inches(34);
    EXPECT_THAT(stops(made::plan(a)), IsEmpty());
}

TEST(Crew, AQuiltWithoutANameIsSpokenOfAllTheSame) {
    auto a = oneQuilt(3, {.freshWidth = 70, .freshLength = 70});
    a.session.jobs[0].name.clear();
    a.quilts[0].name.clear();
    a.session.jobs[0].handed = {{"p1.Z9", "Ada"}};
    const CrewPlan plan = made::plan(a);
    ASSERT_FALSE(stops(plan).empty());
    EXPECT_THAT(stops(plan).front().text.english(), StartsWith("Quilt, pass 1: nobody reaches"));
    const auto handed = std::ranges::find(plan.findings, "/handed/0", &Finding::field);
    ASSERT_NE(handed, plan.findings.end());
    EXPECT_THAT(handed->text, HasSubstr("Zone Z9 of the quilt was handed to Ada"));
}

TEST(Crew, SomebodyMustCloseWithinReach) {
    auto a = oneQuilt(2);
    for (Helper& h : a.session.setting.helpers)
        h.closes = false;
    ASSERT_FALSE(stops(made::plan(a)).empty());
    EXPECT_THAT(stops(made::plan(a)).front().text, HasSubstr("closes pins"));
}

TEST(Crew, DotsNeedAnIronAndSomebodyToHoldIt) {
    auto a = oneQuilt(3, {.with = Basting::With::dots});
    EXPECT_THAT(stops(made::plan(a)).front().text, HasSubstr("no iron"));
    a.session.setting.room.irons = 1;
    const CrewPlan good = made::plan(a);
    EXPECT_THAT(stops(good), IsEmpty());
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, good), IsEmpty());
    for (Helper& h : a.session.setting.helpers)
        h.irons = false;
    EXPECT_THAT(stops(made::plan(a)).front().text, HasSubstr("nobody may iron"));
}

TEST(Crew, HoursTooShortSayByHowMuchAndWhoWouldHaveToStay) {
    auto a = oneQuilt(2);
    const CrewPlan open = made::plan(a);
    for (Helper& h : a.session.setting.helpers)
        h.until = after(a.session.setting.start, Seconds{30 * 60});
    const CrewPlan plan = made::plan(a);
    ASSERT_FALSE(stops(plan).empty());
    EXPECT_THAT(stops(plan).front().text, HasSubstr("longer than some can stay"));
    EXPECT_THAT(stops(plan).front().cure, HasSubstr("until"));
    EXPECT_GE(plan.finish, open.finish);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
}

TEST(Crew, WhoLeavesEarlyIsReplacedInTime) {
    auto a = oneQuilt(4);
    a.session.setting.helpers[2].until = after(a.session.setting.start, Seconds{45 * 60});
    a.session.setting.helpers[3].from = after(a.session.setting.start, Seconds{20 * 60});
    const CrewPlan plan = made::plan(a);
    EXPECT_THAT(stops(plan), IsEmpty());
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
}

TEST(Crew, TooFewWhoLiftIsAWarning) {
    auto a = oneQuilt(3);
    for (Helper& h : a.session.setting.helpers)
        h.lifts = h.name == "Ada";
    const CrewPlan plan = made::plan(a);
    EXPECT_THAT(stops(plan), IsEmpty());
    EXPECT_TRUE(std::ranges::any_of(plan.findings, [](const Finding& f) {
        return f.level == Finding::Level::warn && f.kind == Finding::Kind::fewLift;
    }));
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
}

TEST(Crew, QuiltsShareASurfaceOneAfterAnotherAndDifferentSurfacesRunSideBySide) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(8);
    for (int q = 0; q < 4; ++q)
        made::addQuilt(a, {.across = 1, .surface = 1 + q % 2});
    const CrewPlan plan = made::plan(a);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    Seconds secondStarts{9999999};
    for (const Task& t : plan.tasks)
        if (t.job == 1)
            secondStarts = std::min(secondStarts, t.start);
    EXPECT_EQ(secondStarts, Seconds{0});
}

// Everybody stands at the same place of the table in every pass, where the passes are alike.
TEST(Crew, EverybodyKeepsTheirPlaceAllDay) {
    auto a = oneQuilt(4, {.across = 1, .down = 4});
    made::plan(a);
    std::map<std::string, StandingPlace> first;
    for (const Pass& p : a.quilts[0].passes)
        for (const Stretch& s : p.stretches) {
            ASSERT_EQ(s.edges.size(), 1U);
            StandingPlace at = s.edges.front();
            const Length by = isAcross(at.side) ? p.table.x0 : p.table.y0;
            at.along = {at.along.lo - by, at.along.hi - by};
            const auto was = first.try_emplace(s.person, at).first->second;
            EXPECT_EQ(at.side, was.side) << s.person << " in pass " << p.number;
            EXPECT_LE(abs(at.along.middle() - was.along.middle()), Length::inches(8))
                << s.person << " in pass " << p.number;
        }
    EXPECT_EQ(first.size(), 4U);
}

// What everybody is told in a pass: their zones to pin, their zones to close.
TEST(Crew, AHelpersListHasAtMostThreeLinesAPass) {
    for (const int people : {1, 2, 4, 8}) {
        auto a = oneQuilt(people);
        const CrewPlan plan = made::plan(a);
        std::map<std::pair<std::string, int>, std::set<Call>> calls;
        for (const Task& t : plan.tasks)
            if (!t.zone.empty())
                calls[{t.people.front(), t.pass}].insert(callOf(t.kind));
        for (const auto& [who, own] : calls)
            EXPECT_LE(own.size(), 3U) << who.first << ", pass " << who.second;
    }
}

TEST(Crew, AnotherHelperNeverMakesItLater) {
    for (int people = 1; people < 9; ++people)
        for (const double pace : {0.3, 0.7, 1.0, 1.5}) {
            auto a = oneQuilt(people), more = oneQuilt(people);
            more.session.setting.helpers.push_back(made::helper("Eve", pace));
            a.session.setting.proposeBreaks = more.session.setting.proposeBreaks = false;
            EXPECT_LE(made::plan(more).finish, made::plan(a).finish + Seconds{30})
                << people << " people and one of pace " << pace;
        }
}

TEST(Crew, WhoLeadsHasNoZonesAndWhoDoesNotLiftLaysNothing) {
    auto a = oneQuilt(4);
    a.session.setting.helpers[0].pins = false;
    a.session.setting.helpers[1].lifts = false;
    const CrewPlan plan = made::plan(a);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    EXPECT_THAT(stops(plan), IsEmpty());
}

TEST(Crew, ABreakIsProposedBeforeAnybodyHasWorkedForTwoHours) {
    auto a = oneQuilt(2);
    const CrewPlan plan = made::plan(a);
    ASSERT_FALSE(plan.breaks.empty());
    EXPECT_LE(plan.breaks.front().start, Seconds{105 * 60});
    EXPECT_GE(plan.breaks.front().start, Seconds{60 * 60});
    a.session.setting.proposeBreaks = false;
    EXPECT_TRUE(made::plan(a).breaks.empty());
    a.session.setting.breaks = {{after(a.session.setting.start, Seconds{3600}),
                                 after(a.session.setting.start, Seconds{4500})}};
    const CrewPlan told = made::plan(a);
    ASSERT_EQ(told.breaks.size(), 1U);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, told), IsEmpty());
}

// Wishes change the hands of their zone and nobody else's.
TEST(Crew, HandingAZoneOverChangesThatZoneAlone) {
    auto a = oneQuilt(4), b = oneQuilt(4);
    const CrewPlan before = made::plan(a);
    const auto zone = std::ranges::find_if(
        a.quilts[0].zones, [](const Zone& z) { return z.pass == 1 && z.id == "p1.B1"; });
    ASSERT_NE(zone, a.quilts[0].zones.end());
    b.session.jobs[0].handed = {{"p1.B1", "Ada"}};
    const CrewPlan after = made::plan(b);
    EXPECT_EQ(a.quilts[0].zones, b.quilts[0].zones);
    for (const Task& t : before.tasks) {
        const auto same = std::ranges::find(after.tasks, t.id, &Task::id);
        ASSERT_NE(same, after.tasks.end()) << t.id;
        if (t.zone != "p1.B1" && !t.zone.empty()) {
            EXPECT_EQ(t.people, same->people) << t.id;
        }
    }
}

/// Totals that practice reports.
std::vector<made::Reported> totals(Basting::With with) {
    std::vector<made::Reported> out;
    std::ranges::copy_if(made::kReported, std::back_inserter(out),
                         [&](const made::Reported& r) { return !r.pinning && r.with == with; });
    return out;
}

// The plan's range contains them.
class Practice : public testing::TestWithParam<made::Reported> {};
TEST_P(Practice, LiesInTheRange) {
    const made::Reported& r = GetParam();
    auto a = made::asReported(r);
    const CrewPlan plan = made::plan(a);
    EXPECT_LE(plan.range.early, Seconds{60 * r.to}) << r.what;
    EXPECT_GE(plan.range.late, Seconds{60 * r.from}) << r.what;
}
INSTANTIATE_TEST_SUITE_P(Totals, Practice, testing::ValuesIn(totals(Basting::With::pins)),
                         [](const auto& test) { return "Case" + std::to_string(test.index); });

// Totals of thread differ sevenfold by the area a person sews in an hour; the plan is within a
// factor of two of each, and neither shorter nor longer than all.
TEST(Practice, ThreadLiesBetweenTheReports) {
    int shorter = 0, longer = 0;
    for (const made::Reported& r : totals(Basting::With::thread)) {
        auto a = made::asReported(r);
        const auto middle = made::plan(a).range.middle;
        EXPECT_GE(2 * middle, Seconds{60 * r.from}) << r.what;
        EXPECT_LE(middle, Seconds{2 * 60 * r.to}) << r.what;
        (middle < Seconds{60 * r.from} ? shorter : longer)++;
    }
    EXPECT_GT(shorter, 0);
    EXPECT_GT(longer, 0);
}

TEST(Crew, ThreadIsSewnInOneStepAfterThePalm) {
    auto a = oneQuilt(3, {.with = Basting::With::thread});
    const CrewPlan plan = made::plan(a);
    EXPECT_FALSE(anyStop(plan.findings));
    for (const Pass& p : a.quilts[0].passes) {
        Seconds smoothed{}, first{std::numeric_limits<std::int64_t>::max()};
        for (const Task& t : plan.tasks) {
            if (t.pass != p.number)
                continue;
            if (t.kind == TaskKind::smooth)
                smoothed = t.end;
            if (t.kind == TaskKind::stitch)
                first = std::min(first, t.start);
        }
        EXPECT_GT(smoothed, Seconds{});
        EXPECT_GE(first, smoothed);
    }
    for (const Zone& z : a.quilts[0].zones) {
        const auto sewn = std::ranges::count_if(plan.tasks, [&](const Task& t) {
            return t.zone == z.id && t.kind == TaskKind::stitch;
        });
        EXPECT_EQ(sewn, z.points.empty() ? 0 : 1) << z.id;
        EXPECT_LE(z.points.size(), 45u) << z.id;
    }
}

// From memory: one person sprays and smooths a queen in 30 to 45 min.
TEST(Practice, AQueenIsSprayedInAboutHalfAnHour) {
    const auto r = std::ranges::find(made::kReported, Basting::With::spray, &made::Reported::with);
    auto a = made::asReported(*r);
    const CrewPlan plan = made::plan(a);
    Seconds spraying{};
    for (const Task& t : plan.tasks)
        if (t.kind == TaskKind::spray)
            spraying += t.end - t.start;
    EXPECT_GE(spraying, Seconds{60 * r->from});
    EXPECT_LE(spraying, Seconds{60 * r->to});
}

TEST(Crew, SprayIsSmoothedOverAndLeftAloneAfterwards) {
    auto a = oneQuilt(3, {.spacing = 15, .with = Basting::With::spray});
    const CrewPlan plan = made::plan(a);
    EXPECT_FALSE(anyStop(plan.findings));
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), IsEmpty());
    for (const Pass& p : a.quilts[0].passes) {
        std::vector<const Task*> last;
        Seconds sprayed{};
        for (const Task& t : plan.tasks) {
            if (t.pass != p.number)
                continue;
            if (t.kind == TaskKind::spray)
                sprayed = std::max(sprayed, t.end);
            if (t.kind == TaskKind::smooth || t.kind == TaskKind::settle ||
                t.kind == TaskKind::checkUnderside)
                last.push_back(&t);
        }
        ASSERT_EQ(last.size(), 3u);
        EXPECT_EQ(last[0]->kind, TaskKind::smooth);
        EXPECT_GE(last[0]->start, sprayed);
        EXPECT_EQ(last[1]->kind, TaskKind::settle);
        EXPECT_TRUE(last[1]->people.empty());
        EXPECT_GE(last[1]->end - last[1]->start, Seconds{60});
        EXPECT_GE(last[2]->start, last[1]->end);
    }
    for (const Zone& z : a.quilts[0].zones)
        EXPECT_LE(z.points.size(), 12u) << z.id;
}

} // namespace
