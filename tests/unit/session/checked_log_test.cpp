#include "planners/whole/whole.h"
#include "session/change.h"
#include "session/checked_log.h"
#include "session/live_session.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

#include <algorithm>

/// A log that comes from elsewhere or was edited: what cannot be is said in one sentence when the
/// session is opened.
namespace bastewright {
namespace {

using made::Reporter;
using ::testing::HasSubstr;

struct Quilt {
    Session session;
    Plan plan;
};

/// A small quilt, planned by the program: its plan keeps every rule.
const Quilt& quilt() {
    static const Quilt one = [] {
        Quilt out;
        Job& job = out.session.jobs.emplace_back();
        job.name = "Harbour Lights";
        job.top.width = {40_in};
        job.top.length = {48_in};
        out.session.setting.room.tables = {Table{.length = 48_in, .width = 30_in}};
        for (const char* name : {"Ada", "Bo"})
            out.session.setting.helpers.emplace_back().name = name;
        out.session.setting.stash.pins = 500;
        out.plan = planWhole(out.session);
        return out;
    }();
    return one;
}

const std::string& firstZone() {
    return quilt().plan.quilts.front().zones.front().id;
}

std::string said(const std::vector<Event>& events) {
    return faultOfLog(quilt().session, quilt().plan, events).english();
}

struct Edited {
    const char* what;
    void (*edit)(Reporter&);
    const char* says;
};

TEST(CheckedLog, SaysNothingOfALogAsItWasWritten) {
    Reporter r;
    r.start().open(firstZone(), "Ada").open(firstZone(), "Ada"); // twice, by two tablets
    r.out("Bo").undo(r.last()).undo("e1");
    EXPECT_EQ(said(r.events()), "");
}

TEST(CheckedLog, SaysWhatIsNamedAndNotThere) {
    const Edited all[] = {
        {"a zone", [](Reporter& r) { r.open("p9.Z1", "Ada"); }, "There is no zone p9.Z1."},
        {"a step", [](Reporter& r) { r.step("q7.dance"); }, "There is no step q7.dance."},
        {"a pass", [](Reporter& r) { r.release(40); }, "There is no pass 40."},
        {"a person", [](Reporter& r) { r.open(firstZone(), "Zoe"); },
         "Nobody called Zoe is among the helpers."},
        {"somebody who leaves", [](Reporter& r) { r.out("Zoe"); },
         "Nobody called Zoe is among the helpers."},
        {"an event", [](Reporter& r) { r.undo("e77"); }, "There is no event e77 to take back."},
        {"a check",
         [](Reporter& r) { r.answer(quilt().plan.tasks.front().id, "the-weather", true); },
         "Nothing is asked that is called the-weather."},
        {"a plan",
         [](Reporter& r) { r.tell(happened::Unread{.why = core::says("The plan is torn.")}); },
         "The plan is torn."}};
    for (const Edited& one : all) {
        Reporter r;
        one.edit(r.start());
        const std::string text = said(r.events());
        EXPECT_THAT(text, HasSubstr(one.says)) << one.what;
        EXPECT_THAT(text, HasSubstr("One of the 2 things noted in this session cannot be"))
            << one.what;
        EXPECT_THAT(text, HasSubstr("nothing is lost")) << one.what;
    }
    Reporter r;
    r.start().open("p9.Z1", "Ada").release(40);
    EXPECT_THAT(said(r.events()), HasSubstr("2 of the 3 things noted"));
}

TEST(CheckedLog, NamesOfAPlanThatWasTakenBackWereThereOnce) {
    Plan other = quilt().plan;
    other.quilts.front().zones.front().id = "p1.Q1";
    Reporter r;
    r.start().replanned(other);
    const std::string taken = r.last();
    r.open("p1.Q1", "Ada").undo(taken);
    EXPECT_EQ(said(r.events()), "");
}

TEST(CheckedLog, JudgesThePlanInForce) {
    Reporter r;
    r.start();
    LiveSession live{quilt().session, quilt().plan, r.events()};
    const auto p = propose(live.session(), live.plan(), live.events(), live.state(),
                           {.kind = Change::Kind::personOut, .person = "Bo"}, r.nowMs());
    ASSERT_EQ(p.refused, "");
    r.out("Bo");
    Reporter good = r, bad = r;
    EXPECT_EQ(said(good.replanned(p.plan).events()), "");
    Plan broken = p.plan;
    for (Task& t : broken.tasks)
        if (!t.people.empty())
            t.people = {"Bo"};
    const std::string text = said(bad.replanned(broken).events());
    EXPECT_THAT(text, HasSubstr("The plan of this session breaks a rule: "));
    // Taken back it is not in force.
    EXPECT_EQ(said(bad.undo(bad.last()).events()), "");
    Plan first = quilt().plan;
    first.quilts.front().zones.front().points.clear();
    EXPECT_THAT(faultOfLog(quilt().session, first, r.events()).english(),
                HasSubstr("The plan of this session breaks a rule: "));
}

} // namespace
} // namespace bastewright
