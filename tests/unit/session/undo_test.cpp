#include "session/live_state.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

using made::Reporter;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

// A taking back can itself be taken back, so the list of those is all that may differ.
LiveState withoutRedo(LiveState s) {
    s.redoable.clear();
    return s;
}

TEST(Undo, OfTheLastEventRestoresTheStateBeforeItExactly) {
    Reporter r;
    r.start().allOfPassOne().found(7).in("Cai");
    const auto before = folded(r);
    for (const What& what :
         {What{happened::Paused{}}, What{happened::Ended{}}, What{happened::PinsCounted{}}}) {
        Reporter next = r;
        next.tell(what);
        ASSERT_NE(folded(next), before) << name(what);
        next.undo(next.last());
        EXPECT_EQ(withoutRedo(folded(next)), before) << name(what);
    }
    Reporter released = r;
    released.release(1).undo(released.last());
    EXPECT_EQ(withoutRedo(folded(released)), before);
}

TEST(Undo, OfAnEarlierTickTakesWhatRestedOnItOutOfTheState) {
    Reporter r;
    r.start().open("A1", "Ada").close("A1", "Ada").undo("e2");
    const auto s = folded(r);
    EXPECT_EQ(s.zones.at({0, "A1"}).state, ZoneState::waiting);
    EXPECT_THAT(s.ignored, ElementsAre(HasSubstr("Zone A1 is waiting")));
    EXPECT_EQ(s.pinsOut, 0);
    r.undo(r.last());
    EXPECT_EQ(folded(r).zones.at({0, "A1"}).state, ZoneState::closed) << "nothing was lost";
}

TEST(Undo, OffersTicksAndTakingsBackApart) {
    Reporter r;
    r.start().open("A1", "Ada").open("B1", "Bo").undo("e3");
    auto s = folded(r);
    EXPECT_THAT(s.undoable, ElementsAre("e2"));
    EXPECT_THAT(s.redoable, ElementsAre("e4"));
    r.undo("e4");
    s = folded(r);
    EXPECT_THAT(s.undoable, ElementsAre("e2", "e3"));
    EXPECT_THAT(s.redoable, ElementsAre("e5"));
}

TEST(Undo, PressedUntilNothingIsLeftEndsAtTheStart) {
    Reporter r;
    r.start().allOfPassOne();
    while (!folded(r).undoable.empty())
        r.undo(folded(r).undoable.back());
    Reporter fresh;
    fresh.start();
    EXPECT_EQ(withoutRedo(folded(r)), folded(fresh));
    EXPECT_THAT(folded(r).redoable, SizeIs(9));
}

} // namespace
} // namespace bastewright
