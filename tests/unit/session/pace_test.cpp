#include "plan/plan_json.h"
#include "session/pace.h"
#include "unit/session/table_plan.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using made::Reporter;

const Plan& plan() {
    static const Plan kPlan = made::pinnedPlan();
    return kPlan;
}

double pace(const Reporter& r, const std::string& who) {
    return learntPace(plan(), r.events(), who);
}

// Both passes with every zone step taking so many seconds a person (they tick one after another, a
// second apart), and every step taking `step` seconds.
Reporter wholeSession(int zoneSeconds, int step = 100) {
    Reporter r{0};
    r.start();
    const auto zones = [&](Tick kind, const char* a, const char* b) {
        r.wait(zoneSeconds).tick(kind, a, "Ada").tick(kind, b, "Bo");
    };
    const auto steps = [&](const char* id) { r.wait(step).step(id); };
    for (const char* id : {"lay-backing", "lay-batting", "lay-top"})
        steps(id);
    zones(Tick::opened, "A1", "B1");
    steps("smooth-1");
    zones(Tick::closed, "A1", "B1");
    steps("check-1");
    r.release(1);
    steps("shift-2");
    zones(Tick::opened, "A2", "B2");
    steps("smooth-2");
    zones(Tick::closed, "A2", "B2");
    return r;
}

// 65 s are planned for each of four pieces of work of each person.
TEST(LearntPace, FollowsTheTicksAndNeverAllTheWay) {
    EXPECT_NEAR(pace(wholeSession(65), "Ada"), 1, 1e-9);
    EXPECT_GT(pace(wholeSession(130), "Ada"), 0.5);
    EXPECT_LT(pace(wholeSession(130), "Ada"), 0.65);
    EXPECT_GT(pace(wholeSession(50), "Bo"), 1.15);
    EXPECT_LT(pace(wholeSession(50), "Bo"), 65 / 50.);
}

TEST(LearntPace, OfWhoHasTickedNothingIsWhatAllHaveInCommon) {
    EXPECT_DOUBLE_EQ(learntPace(plan(), Reporter{0}.start().events(), "Cai"), 1);
    EXPECT_LT(pace(wholeSession(130), "Cai"), 1);
    EXPECT_GT(pace(wholeSession(130), "Cai"), pace(wholeSession(130), "Ada"));
}

TEST(LearntPace, OneTickWeighsLittle) {
    Reporter r{0};
    r.start().step("lay-top").wait(130).open("A1", "Ada");
    EXPECT_LT(pace(r, "Ada"), 1);
    EXPECT_GT(pace(r, "Ada"), pace(wholeSession(130), "Ada"));
}

// So many zones of pass 1, all to be opened by Ada in 65 s each, ticked together after `seconds`.
double paceOfTogether(int zones, int seconds) {
    Plan big = made::pinnedPlan();
    const Zone zone = big.quilts[0].zones[0];
    const Task open = big.tasks[3];
    big.quilts[0].zones.clear();
    std::erase_if(big.tasks, [](const Task& t) { return !t.zone.empty(); });
    Reporter r{0};
    r.start().step("lay-top").wait(seconds);
    for (int i = 0; i < zones; ++i) {
        big.quilts[0].zones.push_back(zone);
        big.quilts[0].zones.back().id = big.tasks.emplace_back(open).zone = "Z" + std::to_string(i);
        big.tasks.back().id = "open-" + big.tasks.back().zone;
        r.wait(1).open(big.tasks.back().zone, "Ada");
    }
    return learntPace(big, r.events(), "Ada");
}

TEST(LearntPace, ZonesTickedLateAndTogetherComeOutRight) {
    EXPECT_NEAR(paceOfTogether(3, 3 * 65 - 3), 1, 1e-3);
    EXPECT_NEAR(paceOfTogether(12, 12 * 65 - 12), 1, 1e-3);
    EXPECT_NEAR(paceOfTogether(12, 2 * 12 * 65 - 12), 0.55, 0.06);
    EXPECT_GT(paceOfTogether(4, 3600), 1.0 / 3) << "an hour away is not believed";
}

TEST(LearntPace, BreaksDoNotCount) {
    Reporter r = wholeSession(65);
    Reporter rested{0};
    rested.start();
    for (std::size_t i = 1; i < r.events().size(); ++i) {
        const auto& e = r.events()[i];
        const auto before = r.events()[i - 1].atMs;
        rested.tell(happened::Paused{}).wait(3600).tell(happened::Resumed{});
        rested.wait(static_cast<int>((e.atMs - before) / 1000));
        rested.tell(e.what);
    }
    EXPECT_NEAR(pace(rested, "Ada"), 1, 1e-9);
    EXPECT_NEAR(pace(rested, "Bo"), 1, 1e-9);
}

TEST(LearntPace, TicksTakenBackDoNotCount) {
    Reporter r = wholeSession(65);
    const auto before = pace(r, "Ada");
    r.undo(r.events()[4].id).undo(r.last());
    EXPECT_DOUBLE_EQ(pace(r, "Ada"), before) << "taken back and brought again";
}

TEST(LearntPace, AClockSetBackOrForwardDoesLittleHarm) {
    for (const std::int64_t jump : {-7'200'000, 7'200'000}) {
        auto events = wholeSession(65).events();
        for (std::size_t i = 8; i < events.size(); ++i)
            events[i].atMs += jump;
        const auto p = learntPace(plan(), events, "Ada");
        EXPECT_GE(p, 0.65) << jump;
        EXPECT_LE(p, 1.5) << jump;
    }
}

TEST(LearntPace, BeginsAnewAfterAReplan) {
    Reporter r = wholeSession(130);
    r.replanned(plan());
    EXPECT_DOUBLE_EQ(pace(r, "Ada"), 1) << "the new plan carries the learnt pace";
}

TEST(LearntPace, IsForWhoDidTheWorkNotForWhomItWasPlanned) {
    // Bo is planned at half pace: 10 pins take 115 s instead of 65. Ada does his zones at her own.
    Plan slowBo = made::pinnedPlan();
    for (auto& t : slowBo.tasks)
        if (t.people == std::vector<std::string>{"Bo"})
            t.end = t.start + Seconds{130};
    Reporter r{0};
    r.start().step("lay-top").wait(65).open("B1", "Ada").step("smooth-1");
    r.wait(65).close("B1", "Ada").step("check-1");
    r.wait(65).open("A1", "Ada");
    EXPECT_NEAR(learntPace(slowBo, r.events(), "Ada"), 1, 1e-9);
}

TEST(Elapsed, NeverRunsBackwards) {
    Reporter r{60};
    r.start().open("A1", "Ada").open("B1", "Bo");
    EXPECT_EQ(elapsed(r.events(), 0), Seconds{120});
    EXPECT_EQ(elapsed(r.events(), r.nowMs() + 30'000), Seconds{150});
    EXPECT_EQ(elapsed(r.events(), r.nowMs() - 5'000), Seconds{120}) << "another device's clock";
    EXPECT_EQ(elapsed(r.events(), r.nowMs() - 3'600'000), Seconds{120}) << "a clock set back";
    EXPECT_EQ(elapsed({}, r.nowMs()), Seconds{0});
}

TEST(Elapsed, TwoTabletsWithDifferentClocksDoNotStretchTime) {
    auto events = Reporter{60}.start().allOfPassOne().events();
    for (std::size_t i = 1; i < events.size(); i += 2)
        events[i].atMs += 5 * 60 * 1000;
    EXPECT_LE(elapsed(events, 0), Seconds{9 * 60 + 5 * 60});
}

TEST(Elapsed, AfterAClockWasSetBackTimeGoesOn) {
    auto events = Reporter{60}.start().allOfPassOne().events();
    for (std::size_t i = 5; i < events.size(); ++i)
        events[i].atMs -= 3'600'000;
    EXPECT_EQ(elapsed(events, 0), Seconds{8 * 60}) << "only the minute of the step back is unknown";
}

TEST(Forecast, BeforeTheStartIsThePlan) {
    const auto f =
        forecast(plan(), made::smallSetting(), fold(plan(), made::smallSetting(), {}), {}, 0);
    EXPECT_EQ(f.finish, plan().finish);
}

Forecast forecastOf(const Reporter& r) {
    return forecast(plan(), made::smallSetting(), fold(plan(), made::smallSetting(), r.events()),
                    r.events(), r.nowMs());
}

TEST(Forecast, AtTheStartIsThePlanWithARange) {
    Reporter r;
    r.start();
    const auto f = forecastOf(r);
    // The plan made by hand lets nobody wait for the slowest: its middle afternoon is longer.
    EXPECT_NEAR(double(f.finish.count()), double(plan().finish.count()),
                0.12 * double(plan().finish.count()));
    EXPECT_LT(f.early, f.finish);
    EXPECT_GT(f.late, f.finish);
    EXPECT_EQ(f.left, f.finish);
}

TEST(Forecast, HoursCountFromTheStartWithinAnAfternoonOfThePlannedOne) {
    using namespace std::chrono_literals;
    const auto from = [](std::chrono::minutes began) {
        return hoursCountFrom({13h}, ClockTime{began}).sinceMidnight;
    };
    EXPECT_EQ(hoursCountFrom({13h}, {}), ClockTime{13h});
    EXPECT_EQ(from(13h + 25min), 13h + 25min);
    EXPECT_EQ(from(10h), 10h);
    EXPECT_EQ(from(19h), 19h);
    EXPECT_EQ(from(9h + 59min), 13h) << "another day";
    EXPECT_EQ(from(19h + 1min), 13h);
}

// Whoever must leave leaves when the clock says so, however late it began.
TEST(Forecast, SomebodyWhoMustLeaveLeavesALateSessionSooner) {
    Reporter r;
    r.start();
    Setting setting = made::smallSetting();
    const auto whole = std::chrono::ceil<std::chrono::minutes>(plan().finish);
    setting.helpers.front().until = ClockTime{setting.start.sinceMidnight + whole};
    const auto left = [&](std::chrono::minutes late) {
        Setting began = setting;
        began.start.sinceMidnight += late;
        return forecast(plan(), began, fold(plan(), setting, r.events()), r.events(), r.nowMs())
            .left;
    };
    EXPECT_GT(left(whole / 2), left(std::chrono::minutes{0}));
}

TEST(Forecast, FollowsAnEarlyAndALateTable) {
    // After both passes only the check (90 s) and the rolling up (300 s) are left.
    const auto onTime = forecastOf(wholeSession(65));
    EXPECT_NEAR(double(onTime.left.count()), 390, 40);
    const auto slow = forecastOf(wholeSession(130));
    EXPECT_GT(slow.left, onTime.left + Seconds{60});
    EXPECT_EQ(slow.finish, slow.left + elapsed(wholeSession(130).events(), 0));
}

// Summer time, a battery pulled, a hand at the settings: what is left is what was left.
TEST(Forecast, AnHourSetForwardOrBackInMidSessionLeavesWhatIsLeft) {
    const auto steady = wholeSession(65);
    const auto left = forecastOf(steady).left;
    const auto state = fold(plan(), made::smallSetting(), steady.events());
    for (const std::int64_t jump : {3'600'000, -3'600'000})
        for (std::size_t from = 1; from < steady.events().size(); ++from) {
            auto events = steady.events();
            for (std::size_t i = from; i < events.size(); ++i)
                events[i].atMs += jump;
            const auto after = fold(plan(), made::smallSetting(), events);
            EXPECT_EQ(after.doneTasks, state.doneTasks) << "clocks decide nothing";
            EXPECT_EQ(after.currentPass, state.currentPass);
            const auto f =
                forecast(plan(), made::smallSetting(), after, events, steady.nowMs() + jump);
            EXPECT_GE(f.left, left * 6 / 10) << jump << " from " << from;
            EXPECT_LE(f.left, left * 16 / 10) << jump << " from " << from;
            EXPECT_LE(f.early, f.finish);
            EXPECT_LE(f.finish, f.late);
        }
}

TEST(Forecast, NarrowsAsTheWorkGoesOn) {
    Reporter start;
    start.start();
    const auto first = forecastOf(start), last = forecastOf(wholeSession(65));
    EXPECT_LT(last.late - last.early, first.late - first.early);
}

TEST(Forecast, TimeThatPassesWithoutATickIsTakenOffTheWorkInHand) {
    Reporter r{0};
    r.start().step("lay-top").wait(5).open("A1", "Ada").wait(30);
    const auto soon = forecastOf(r);
    r.wait(20);
    EXPECT_NEAR(double(forecastOf(r).finish.count()), double(soon.finish.count()), 30)
        << "Bo is at B1 and still within his time";
    r.wait(3600);
    EXPECT_GT(forecastOf(r).finish, soon.finish + Seconds{3400});
}

TEST(Forecast, TheWorkOfThoseWhoLeftFallsToTheOthers) {
    Reporter r{0};
    r.start().step("lay-top");
    const auto both = forecastOf(r);
    r.out("Bo");
    const auto alone = forecastOf(r);
    EXPECT_GE(alone.left - both.left, Seconds{4 * 60}) << "Ada does four further pieces of 65 s";
}

TEST(Forecast, OfAnEndedSessionIsWhenItEnded) {
    Reporter r = wholeSession(65);
    const auto ended = elapsed(r.events(), 0);
    r.tell(happened::Ended{}).wait(9999);
    EXPECT_EQ(forecastOf(r).finish, ended);
    EXPECT_EQ(forecastOf(r).left, Seconds{0});
}

} // namespace
} // namespace bastewright
