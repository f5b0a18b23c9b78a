#include "session/nudge.h"
#include "session/pace.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

using made::Reporter;
using ::testing::Contains;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

std::vector<Nudge> at(const Reporter& r, int pins = 100, const Plan& plan = made::pinnedPlan()) {
    auto setting = made::smallSetting();
    setting.stash.pins = pins;
    const LiveState state = fold(plan, setting, r.events());
    return nudges(plan, setting, state, r.events(), r.nowMs(),
                  forecast(plan, setting, state, r.events(), r.nowMs()).finish);
}

auto kind(Nudge::Kind k) {
    return Contains(Field(&Nudge::kind, k));
}

TEST(Nudges, AreSilentWhileAllIsWell) {
    Reporter r;
    EXPECT_THAT(at(r), IsEmpty());
    r.start().step("lay-top").open("A1", "Ada");
    EXPECT_THAT(at(r), IsEmpty());
}

// Common practice: a break every 75 to 90 minutes of work.
TEST(Nudges, ARestAfterAnHourAndAQuarter) {
    Reporter r;
    r.start().wait(74 * 60);
    EXPECT_THAT(at(r), Not(kind(Nudge::Kind::rest)));
    r.wait(60);
    EXPECT_THAT(at(r), kind(Nudge::Kind::rest));
    r.tell(happened::Paused{});
    EXPECT_THAT(at(r), Not(kind(Nudge::Kind::rest))) << "they are resting";
    r.wait(600).tell(happened::Resumed{});
    EXPECT_THAT(at(r), Not(kind(Nudge::Kind::rest)));
    r.wait(74 * 60);
    EXPECT_THAT(at(r), Not(kind(Nudge::Kind::rest))) << "counted from the end of the break";
    r.wait(60);
    EXPECT_THAT(at(r), kind(Nudge::Kind::rest));
}

TEST(Nudges, ARestDoesNotDependOnHowMuchIsDone) {
    Reporter r{0};
    r.start().wait(30 * 60).open("A1", "Ada").open("B1", "Bo").step("smooth-1");
    r.close("A1", "Ada").close("B1", "Bo").step("check-1").release(1);
    r.step("shift-2").open("A2", "Ada").open("B2", "Bo").step("smooth-2");
    r.close("A2", "Ada").close("B2", "Bo");
    EXPECT_THAT(at(r), Not(kind(Nudge::Kind::rest)));
    r.wait(45 * 60);
    EXPECT_THAT(at(r), kind(Nudge::Kind::rest));
}

TEST(Nudges, AZoneThatTakesMuchLongerThanPlannedIsNoticed) {
    Reporter r{0};
    r.start().step("lay-top").wait(240);
    EXPECT_THAT(at(r), Not(kind(Nudge::Kind::slowZone))) << "65 s planned, 240 s is not yet slow";
    r.wait(10);
    const auto said = at(r);
    ASSERT_THAT(said, kind(Nudge::Kind::slowZone));
    EXPECT_THAT(said.front().text, HasSubstr("Zone A1 has been with Ada for 4 min"));
}

TEST(Nudges, PinsThatWillNotLastAreSaidBeforeTheyRunOut) {
    Reporter r;
    r.start();
    EXPECT_THAT(at(r, 40), IsEmpty());
    const auto said = at(r, 33);
    ASSERT_THAT(said, kind(Nudge::Kind::pinsShort));
    EXPECT_THAT(said.front().text, HasSubstr("fetch 7 more"));
}

TEST(Nudges, MissingPinsComeFirst) {
    Reporter r;
    r.start().inBox(28); // two of thirty are lost
    const auto said = at(r, 30);
    ASSERT_FALSE(said.empty());
    EXPECT_EQ(said.front().kind, Nudge::Kind::pinsMissing);
}

TEST(Nudges, ALateFinishSuggestsPlanningAgain) {
    Reporter r{0};
    r.start().step("lay-top").wait(20 * 60).open("A1", "Ada");
    EXPECT_THAT(at(r), kind(Nudge::Kind::behind));
}

} // namespace
} // namespace bastewright
