#include "session/pins.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

using made::Reporter;
using ::testing::AllOf;
using ::testing::HasSubstr;

PinCount counted(const Reporter& r, int box = 100) {
    auto setting = made::smallSetting();
    setting.stash.pins = box;
    const Plan plan = made::pinnedPlan();
    return countPins(plan, setting, fold(plan, setting, r.events()));
}

TEST(Pins, AreCountedOutByZone) {
    Reporter r;
    r.start().open("A1", "Ada").open("B1", "Bo").step("smooth-1").close("A1", "Ada");
    const auto pins = counted(r);
    EXPECT_EQ(pins.box, 100);
    EXPECT_EQ(pins.out, 20);
    EXPECT_EQ(pins.left, 80);
    EXPECT_EQ(pins.toPlace, 20);
    EXPECT_EQ(pins.perZone.at({0, "A1"}), 10);
    EXPECT_EQ(pins.missing, 0);
    EXPECT_EQ(missingPinsNotice(pins), "");
}

TEST(Pins, ThatAreTooFewForWhatIsLeftAreKnownBeforehand) {
    Reporter r;
    r.start().open("A1", "Ada");
    EXPECT_EQ(counted(r, 40).shortBy(), 0);
    EXPECT_EQ(counted(r, 25).shortBy(), 15);
    r.found(9);
    EXPECT_EQ(counted(r, 25).shortBy(), 6) << "nine more turned up";
}

TEST(Pins, CountedBackAndFinishedLeaveTheMissingOnes) {
    Reporter r;
    r.start().allOfPassOne().tell(happened::Ended{}).back(12);
    EXPECT_EQ(counted(r).missing, 0) << "counting is not finished";
    r.back(5).tell(happened::PinsCounted{});
    EXPECT_EQ(counted(r).missing, 3);
    EXPECT_THAT(missingPinsNotice(counted(r)),
                AllOf(HasSubstr("3 pins are missing"), HasSubstr("sweep the floor with a magnet"),
                      HasSubstr("not for anybody with a pacemaker")));
    r.back(3);
    EXPECT_EQ(counted(r).missing, 0);
}

TEST(Pins, ABoxThatHoldsFewerThanWasSaidIsShortAndNothingIsLost) {
    Reporter r;
    r.start().found(-70);
    EXPECT_EQ(counted(r).missing, 0);
    EXPECT_EQ(counted(r).left, 30);
    EXPECT_EQ(counted(r).shortBy(), 10);
    EXPECT_EQ(missingPinsNotice(counted(r)), "");
}

TEST(Pins, OnlyACountOfTheBoxTellsWhatIsLost) {
    Reporter r;
    r.start().allOfPassOne().tell(happened::Ended{}); // 20 of 100 in the quilt
    EXPECT_EQ(counted(r).missing, 0) << "those in the quilt are where they belong";
    r.inBox(79);
    EXPECT_EQ(counted(r).missing, 1);
    EXPECT_EQ(counted(r).left, 79);
    EXPECT_EQ(counted(r).stillOut(), 20);
    EXPECT_THAT(missingPinsNotice(counted(r)), HasSubstr("One pin is missing"));
    r.found(1);
    EXPECT_EQ(counted(r).missing, 0) << "it turned up";
    EXPECT_EQ(counted(r).left, 80);
    EXPECT_EQ(counted(r).box, 100);
    r.inBox(85);
    EXPECT_EQ(counted(r).missing, 0) << "more than was thought";
    EXPECT_EQ(counted(r).box, 105);
    r.inBox(-1);
    EXPECT_EQ(counted(r).left, 85) << "no such count";
}

TEST(Pins, CountedOnceTheQuiltIsQuiltedTheSumComesOut) {
    Reporter r;
    r.start().allOfPassOne().tell(happened::Ended{});
    r.back(20).inBox(97);
    EXPECT_EQ(counted(r).stillOut(), 0);
    EXPECT_EQ(counted(r).missing, 3);
}

} // namespace
} // namespace bastewright
