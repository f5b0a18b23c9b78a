#include "session/effective.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

using made::Reporter;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

TEST(Effective, EverythingCountsWhileNothingIsTakenBack) {
    Reporter r;
    r.start().open("A1", "Ada").open("B1", "Bo");
    EXPECT_THAT(effective(r.events()).inEffect, ElementsAre(true, true, true));
}

TEST(Effective, AnUndoTakesItsTargetBackAndAnUndoOfTheUndoBringsItAgain) {
    Reporter r;
    r.start().open("A1", "Ada").undo("e2");
    EXPECT_THAT(effective(r.events()).inEffect, ElementsAre(true, false, true));
    r.undo("e3");
    EXPECT_THAT(effective(r.events()).inEffect, ElementsAre(true, true, false, true));
    r.undo("e4");
    EXPECT_THAT(effective(r.events()).inEffect, ElementsAre(true, false, true, false, true));
}

TEST(Effective, TwoTabletsUndoingTheSameTickIsOneUndo) {
    Reporter r;
    r.start().open("A1", "Ada").undo("e2").undo("e2");
    const auto e = effective(r.events());
    EXPECT_THAT(e.inEffect, ElementsAre(true, false, true, false));
    EXPECT_EQ(e.reasons[3], "Event e2 is taken back already.");
    r.undo("e3"); // one undo of the undo is enough to bring the tick again
    EXPECT_TRUE(effective(r.events()).inEffect[1]);
}

TEST(Effective, ATickTakenBackTwiceOverStaysOutUntilBothAreTakenBack) {
    Reporter r;
    r.start().open("A1", "Ada");
    r.undo("e2").undo("e3"); // out, and in again
    r.undo("e2");            // out by another hand
    r.undo("e4");            // the first taking back counts once more
    EXPECT_FALSE(effective(r.events()).inEffect[1]);
    r.undo("e6");
    EXPECT_FALSE(effective(r.events()).inEffect[1]) << "e5 still takes it back";
    r.undo("e5");
    EXPECT_TRUE(effective(r.events()).inEffect[1]);
}

TEST(Effective, TakingBackWhatIsNotThereOrTheStartIsIgnored) {
    Reporter r;
    r.start().undo("nothing").undo("e1").undo("e4");
    const auto e = effective(r.events());
    EXPECT_THAT(e.inEffect, ElementsAre(true, false, false, false));
    EXPECT_EQ(e.reasons[1], "There is no event nothing to take back.");
    EXPECT_THAT(e.reasons[2], HasSubstr("start of a session cannot be taken back"));
    EXPECT_EQ(e.reasons[3], "There is no event e4 to take back.") << "an event is not its own past";
}

TEST(Effective, AnIdStoredTwiceCountsOnce) {
    Reporter r;
    r.start().open("A1", "Ada");
    auto events = r.events();
    events.push_back(events.back());
    const auto e = effective(events);
    EXPECT_THAT(e.inEffect, ElementsAre(true, true, false));
    EXPECT_EQ(e.reasons[2], "Event e2 is stored already.");
}

} // namespace
} // namespace bastewright
