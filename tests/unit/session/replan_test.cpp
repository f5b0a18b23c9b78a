#include "session/private/learnt.h"
#include "session/replan.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright {
namespace {

struct Begun {
    made::Afternoon afternoon;
    Plan plan;
    LiveState state;

    explicit Begun(int people, const made::Shape& shape = {}) {
        afternoon.session.setting.helpers = made::helpers(people);
        made::addQuilt(afternoon, shape);
        CrewPlan crew = made::plan(afternoon);
        plan.quilts = afternoon.quilts;
        plan.tasks = crew.tasks;
        plan.breaks = crew.breaks;
        plan.finish = crew.finish;
        plan.finishBound = crew.bound;
        plan.range = crew.range;
        state.started = true;
        for (const Helper& h : afternoon.session.setting.helpers)
            state.present.insert(h.name);
    }

    /// Everything that was to end by then is done.
    void workUntil(Seconds now) {
        for (const Task& t : plan.tasks)
            if (t.end <= now)
                state.doneTasks.insert(t.id);
    }
    Plan again(Seconds now, std::map<std::string, Seconds> inHand = {}) const {
        return replan(afternoon.session, plan, state, {.now = now, .inHand = std::move(inHand)});
    }
};

TEST(Replan, AtSecondZeroIsThePlan) {
    for (const int people : {1, 2, 4}) {
        const Begun t{people};
        const Plan again = t.again(Seconds{0}, {{"q1.p1.set-up", Seconds{0}}});
        EXPECT_EQ(again.tasks, t.plan.tasks) << people << " people";
        EXPECT_EQ(again.quilts, t.plan.quilts) << people << " people";
        EXPECT_EQ(again.breaks, t.plan.breaks) << people << " people";
        EXPECT_EQ(again.finish, t.plan.finish) << people << " people";
    }
}

TEST(Replan, KeepsWhatIsDoneAndZonesThatAreBegun) {
    Begun t{4};
    const Task* open = made::taskOf(t.plan, "q1.p1.A1.place-open");
    ASSERT_NE(open, nullptr);
    t.workUntil(open->end);
    t.state.present.erase("Bo");
    const Plan again = t.again(open->end);
    for (const Task& was : t.plan.tasks)
        if (t.state.doneTasks.contains(was.id)) {
            ASSERT_NE(made::taskOf(again, was.id), nullptr) << was.id;
            EXPECT_EQ(made::taskOf(again, was.id)->people, was.people);
        }
    const auto zone = std::ranges::find(again.quilts[0].zones, "p1.A1", &Zone::id);
    ASSERT_NE(zone, again.quilts[0].zones.end());
    EXPECT_EQ(*zone, *std::ranges::find(t.plan.quilts[0].zones, "p1.A1", &Zone::id));
    for (const Task& left : again.tasks)
        if (!t.state.doneTasks.contains(left.id)) {
            EXPECT_EQ(std::ranges::count(left.people, "Bo"), 0) << left.id;
            EXPECT_GE(left.start, open->end) << left.id;
        }
    std::size_t points = 0;
    for (const Zone& z : again.quilts[0].zones)
        points += z.points.size();
    EXPECT_EQ(points, t.afternoon.points[0].size()) << "nothing is lost";
}

TEST(Replan, WhoComesTakesAShareOfTheNextPass) {
    Begun t{3};
    const Task* check = made::taskOf(t.plan, "q1.p1.check-underside");
    ASSERT_NE(check, nullptr);
    t.workUntil(check->end);
    auto& helpers = t.afternoon.session.setting.helpers;
    helpers.push_back(made::helper("Eve"));
    t.state.present.insert("Eve");
    const Plan again = t.again(check->end);
    EXPECT_TRUE(std::ranges::any_of(again.tasks, [](const Task& x) {
        return x.pass == 2 && !x.zone.empty() && x.people.front() == "Eve";
    }));
    EXPECT_LT(again.finish, t.plan.finish);
    EXPECT_EQ(again.quilts[0].passes[0], t.plan.quilts[0].passes[0]);
}

TEST(Replan, WorkNobodyLeftCanDoIsSaidAndTakenUpAgain) {
    Begun t{2};
    const Task* open = made::taskOf(t.plan, "q1.p1.smooth");
    ASSERT_NE(open, nullptr);
    t.workUntil(open->end);
    auto session = t.afternoon.session;
    for (Helper& h : session.setting.helpers)
        h.closes = false;
    const Plan stuck = replan(session, t.plan, t.state, {.now = open->end});
    EXPECT_TRUE(std::ranges::any_of(
        stuck.findings, [](const Finding& f) { return f.level == Finding::Level::stop; }));
    EXPECT_EQ(made::taskOf(stuck, "q1.p1.A1.close-pins"), nullptr);
    const Plan freed = replan(t.afternoon.session, stuck, t.state, {.now = open->end});
    EXPECT_NE(made::taskOf(freed, "q1.p1.A1.close-pins"), nullptr);
}

TEST(Replan, ALearntPaceSharesTheNextPassAnew) {
    Begun t{2, {.across = 1, .down = 3}};
    const Task* check = made::taskOf(t.plan, "q1.p1.check-underside");
    ASSERT_NE(check, nullptr);
    t.workUntil(check->end);
    const Plan again = replan(t.afternoon.session, t.plan, t.state,
                              {.now = check->end, .pace = {{"Ada", 0.6}, {"Bo", 1.4}}});
    std::map<std::string, std::size_t> pins;
    for (const Task& x : again.tasks)
        if (x.kind == TaskKind::placeOpen && x.pass == 2)
            pins[x.people.front()] +=
                std::ranges::find(again.quilts[0].zones, x.zone, &Zone::id)->points.size();
    EXPECT_LT(2 * pins["Ada"], pins["Bo"] + pins["Ada"] / 2);
}

} // namespace
} // namespace bastewright
