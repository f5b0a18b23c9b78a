#include "planners/whole/whole.h"
#include "session/checked_plan.h"
#include "session/private/rest_plan.h"
#include "session/replan.h"
#include "unit/crew/made_session.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <stdexcept>

/// Plans for what is left in situations in which they were kept back: what must hold so that they
/// can be offered.
namespace bastewright {
namespace {

using ::testing::IsEmpty;

Session hall(std::vector<Helper> helpers, Basting::With with = Basting::With::pins,
             Length thickness = 3_mm) {
    Session session;
    Job& job = session.jobs.emplace_back();
    job.name = "Harbour Lights";
    job.top.width = {64_in};
    job.top.length = {80_in};
    job.basting.with = with;
    job.batting.thickness = thickness;
    session.setting.room.tables = {Table{.length = 48_in, .width = 30_in, .count = 2}};
    session.setting.helpers = std::move(helpers);
    session.setting.room.irons = 2;
    session.setting.stash.pins = 1000;
    return session;
}

/// A planned session in which everything before a task is done.
struct Hall {
    Session session;
    Plan plan;
    LiveState state;
    Seconds now{};

    explicit Hall(Session s)
        : session{std::move(s)}
        , plan{planWhole(session, {.effort = 0})} {
        state = asSeenBy(plan, {});
        state.started = true;
        for (const Helper& h : session.setting.helpers)
            if (!h.from || *h.from <= session.setting.start)
                state.present.insert(h.name);
        state.currentPass.assign(plan.quilts.size(), 1);
    }

    Task& task(const std::string& id) {
        const auto at = std::ranges::find(plan.tasks, id, &Task::id);
        if (at == plan.tasks.end())
            throw std::invalid_argument{"no task " + id};
        return *at;
    }
    void workUntil(Seconds time) {
        now = time;
        for (const Task& t : plan.tasks)
            if (t.end <= now) {
                state.doneTasks.insert(t.id);
                if (t.zone.empty())
                    continue;
                ZoneLive& zone = state.zones.at({t.job, t.zone});
                zone.state =
                    std::max(zone.state, isLastWork(t.kind) ? ZoneState::closed : ZoneState::open);
            }
    }
    Plan again(std::map<std::string, double> pace = {},
               std::map<std::string, Seconds> inHand = {}) const {
        return replan(session, plan, state,
                      {.now = now, .pace = std::move(pace), .inHand = std::move(inHand)});
    }
    Findings faults(const Plan& next, std::map<std::string, double> pace = {}) const {
        return faultsOfRest(withLearntPaces(session, {.pace = std::move(pace)}), next, plan, state,
                            now);
    }
};

bool says(const Plan& plan, Finding::Kind kind) {
    return std::ranges::find(plan.findings, kind, &Finding::kind) != plan.findings.end();
}

TEST(RestOffered, HoldsInHandLastAsLongAsTheyTakeThoseWhoHaveThem) {
    Hall h{hall(made::helpers(4))};
    const Task clamp = h.task("q1.p1.clamp");
    ASSERT_GT(clamp.people.size(), 1U);
    h.workUntil(clamp.start);
    // So slow that the others alone would be through sooner.
    const std::map<std::string, double> pace{{clamp.people.front(), 0.25}};
    const Plan again = h.again(pace, {{clamp.id, Seconds{0}}});
    const Task* is = made::taskOf(again, clamp.id);
    ASSERT_NE(is, nullptr);
    EXPECT_EQ(is->people.size(), clamp.people.size());
    EXPECT_LE(is->end - is->start, 4 * (clamp.end - clamp.start));
    EXPECT_THAT(h.faults(again, pace), IsEmpty());
}

TEST(RestOffered, WhereThoseWhoLiftAreGoneItIsSaid) {
    auto helpers = made::helpers(2);
    helpers[1].lifts = false;
    Hall h{hall(helpers)};
    h.workUntil(h.task("q1.p1.lay-top").end);
    h.state.present.erase(helpers[0].name);
    const Plan again = h.again();
    EXPECT_TRUE(says(again, Finding::Kind::nobodyLifts));
    EXPECT_THAT(h.faults(again), IsEmpty());
}

TEST(RestOffered, AZoneThatIsBegunThoughNobodyWasPlannedForItStaysAndIsFinished) {
    Hall h{hall(made::helpers(2))};
    h.workUntil(h.task("q1.p1.lay-top").end);
    const std::string zone = h.plan.quilts[0].passes[0].zones.front();
    std::erase_if(h.plan.tasks, [&](const Task& t) { return t.zone == zone; });
    for (Task& t : h.plan.tasks)
        std::erase_if(t.after, [&](const std::string& id) { return !made::taskOf(h.plan, id); });
    h.state.zones.at({0, zone}).state = ZoneState::open;
    const Plan again = h.again();
    EXPECT_EQ(made::taskOf(again, "q1." + zone + ".place-open"), nullptr);
    EXPECT_NE(made::taskOf(again, "q1." + zone + ".close-pins"), nullptr);
    EXPECT_THAT(h.faults(again), IsEmpty());
}

TEST(RestOffered, WhatIsInHandGoesToSomebodyWhoMayDoIt) {
    auto helpers = made::helpers(2);
    Hall h{hall(helpers)};
    Task& check = h.task("q1.p1.check-underside");
    h.workUntil(check.start);
    const std::string who = check.people.front();
    // Whoever looks underneath has come back only now.
    std::ranges::find(h.session.setting.helpers, who, &Helper::name)->bends = false;
    const Plan again = h.again({}, {{check.id, Seconds{10}}});
    ASSERT_NE(made::taskOf(again, check.id), nullptr);
    EXPECT_NE(made::taskOf(again, check.id)->people, std::vector{who});
    EXPECT_THAT(h.faults(again), IsEmpty());
}

TEST(RestOffered, WhatIsInHandAtTwoTablesStaysWithItsPeople) {
    made::Afternoon made;
    made.session.setting.helpers = made::helpers(6);
    made::addQuilt(made, {.across = 3, .down = 2});
    made::addQuilt(made, {.across = 1, .down = 1, .surface = 2});
    CrewPlan crew = made::plan(made);
    Plan plan;
    plan.quilts = made.quilts;
    plan.tasks = crew.tasks;
    LiveState state = asSeenBy(plan, {});
    state.started = true;
    for (const Helper& h : made.session.setting.helpers)
        state.present.insert(h.name);
    const Seconds now = made::taskOf(plan, "q1.p1.lay-top")->start;
    std::map<std::string, Seconds> inHand;
    for (const Task& t : plan.tasks)
        if (t.end <= now)
            state.doneTasks.insert(t.id);
        else if (t.start <= now)
            inHand.emplace(t.id, now - t.start);
    ASSERT_GT(inHand.size(), 1U);
    for (const char* slow : {"Ada", "Bo", "Cai", "Dot"}) {
        const Plan again = replan(made.session, plan, state,
                                  {.now = now, .pace = {{slow, 0.3}}, .inHand = inHand});
        for (const auto& [id, spent] : inHand) {
            ASSERT_NE(made::taskOf(again, id), nullptr) << id;
            auto is = made::taskOf(again, id)->people, was = made::taskOf(plan, id)->people;
            std::ranges::sort(is);
            std::ranges::sort(was);
            EXPECT_EQ(is, was) << id << ", " << slow << " slow";
        }
        for (const Task& a : again.tasks)
            for (const Task& b : again.tasks)
                for (const std::string& who : a.people)
                    if (&a < &b && a.start < b.end && b.start < a.end) {
                        EXPECT_EQ(std::ranges::count(b.people, who), 0)
                            << who << " in " << a.id << " and " << b.id;
                    }
    }
}

TEST(RestOffered, TwoQuiltsThatLieOnOneTableByTurnsLeaveEverybodyALetterOfTheirOwn) {
    made::Afternoon made;
    made.session.setting.helpers = made::helpers(3);
    made::addQuilt(made, {.across = 2, .down = 1});
    made::addQuilt(made, {.across = 2, .down = 1});
    CrewPlan crew = made::plan(made);
    Plan plan;
    plan.quilts = made.quilts;
    plan.tasks = crew.tasks;
    // As if the second had been planned by itself, from another of them on.
    auto& stretches = plan.quilts[1].passes[0].stretches;
    ASSERT_GT(stretches.size(), 1U);
    std::swap(stretches[0].person, stretches[1].person);
    LiveState state = asSeenBy(plan, {});
    state.started = true;
    for (const Helper& h : made.session.setting.helpers)
        state.present.insert(h.name);
    const Seconds now = made::taskOf(plan, "q1.p1.lay-top")->end;
    for (const Task& t : plan.tasks)
        if (t.pass == 1 && (t.end <= now || t.id == "q2.p1.set-up" || t.id == "q2.p1.lay-backing"))
            state.doneTasks.insert(t.id);
    const Plan again = replan(made.session, plan, state, {.now = now, .pace = {{"Ada", 0.5}}});
    for (const QuiltPlan& q : again.quilts)
        for (const Pass& p : q.passes) {
            std::set<std::string> letters;
            for (const Stretch& s : p.stretches)
                EXPECT_TRUE(letters.insert(s.place).second) << "pass " << p.number << s.place;
        }
}

TEST(RestOffered, TwoWhoAreNeverThereTogetherDoNotLiftTogether) {
    auto helpers = made::helpers(2);
    helpers[0].until = ClockTime{std::chrono::minutes{13 * 60 + 30}};
    helpers[1].from = ClockTime{std::chrono::minutes{16 * 60}};
    made::Afternoon made;
    made.session.setting.start = ClockTime{std::chrono::minutes{13 * 60}};
    made.session.setting.helpers = helpers;
    made::addQuilt(made, {.across = 2, .down = 1, .freshWidth = 20, .freshLength = 20});
    for (Pass& p : made.quilts[0].passes)
        p.liftPeople = 2;
    const CrewPlan crew = made::plan(made);
    const auto shift = std::ranges::find(crew.tasks, TaskKind::shift, &Task::kind);
    ASSERT_NE(shift, crew.tasks.end());
    EXPECT_EQ(shift->people.size(), 1U);
    for (const Task& t : crew.tasks)
        for (const std::string& who : t.people)
            if (who == helpers[1].name) {
                EXPECT_GE(t.start, Seconds{3 * 3600}) << t.id;
            }
}

TEST(RestOffered, APassThatIsOverIsNotPlannedAgainThoughItHadNoTasks) {
    Hall h{hall(made::helpers(2))};
    ASSERT_GT(h.plan.quilts[0].passes.size(), 1U);
    std::erase_if(h.plan.tasks, [](const Task& t) { return t.pass == 1; });
    for (Task& t : h.plan.tasks)
        std::erase_if(t.after, [&](const std::string& id) { return !made::taskOf(h.plan, id); });
    for (const std::string& zone : h.plan.quilts[0].passes[0].zones)
        h.state.zones.at({0, zone}).state = ZoneState::closed;
    h.state.released.emplace(0, 1);
    h.state.currentPass = {2};
    h.now = Seconds{3600};
    const Plan again = h.again();
    EXPECT_TRUE(std::ranges::none_of(again.tasks, [](const Task& t) { return t.pass == 1; }));
    EXPECT_NE(made::taskOf(again, "q1.p2.shift"), nullptr);
}

TEST(RestOffered, OnceTheQuiltIsTurnedOverZonesArePressedInAnyOrderOfPasses) {
    Hall h{hall(made::helpers(2), Basting::With::dots, 12_mm)};
    const auto turn = std::ranges::find(h.plan.tasks, TaskKind::turnOver, &Task::kind);
    ASSERT_NE(turn, h.plan.tasks.end());
    h.workUntil(turn->end);
    h.state.currentPass = {h.plan.quilts[0].passes.back().number};
    EXPECT_THAT(h.faults(h.again()), IsEmpty());
}

TEST(RestOffered, AStepThatWillTakeTooLongAtANewPaceIsDoneInParts) {
    Hall h{hall(made::helpers(2), Basting::With::dots, 12_mm)};
    const auto turn = std::ranges::find(h.plan.tasks, TaskKind::turnOver, &Task::kind);
    ASSERT_NE(turn, h.plan.tasks.end());
    h.workUntil(h.task("q1.p1.lay-top").end);
    for (const Task& t : h.again({{"Ada", 0.1}, {"Bo", 0.1}}).tasks)
        if (t.kind == TaskKind::turnOver) {
            EXPECT_LE(t.end - t.start, Seconds{2 * 3600}) << t.id;
        }
}

TEST(RestOffered, NobodyKeepsAPlaceForZonesThatAreLeftOut) {
    Hall h{hall(made::helpers(2))};
    h.workUntil(h.task("q1.p1.lay-top").end);
    Pass& last = h.plan.quilts[0].passes.back();
    ASSERT_GT(last.stretches.size(), 1U);
    const Stretch stretch = last.stretches.front();
    for (const Zone& z : h.plan.quilts[0].zones)
        if (z.pass == last.number && zonePlace(z.id) == stretch.place)
            h.state.setAside.emplace(0, z.id);
    h.state.present.erase(stretch.person);
    EXPECT_THAT(h.faults(h.again()), IsEmpty());
}

} // namespace
} // namespace bastewright
