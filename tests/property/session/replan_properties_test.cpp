#include "property/session/replan_oracle.h"
#include "session/change.h"
#include "unit/crew/made_session.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace bastewright {
namespace {

using made::Dice;
using ::testing::IsEmpty;

// A session somebody planned, played on time up to a moment.
struct Played {
    Session session;
    Plan plan;
    LiveState state;
    ReplanOptions options;
    std::vector<Event> events{};
};

Plan planOf(const Session& session, const std::vector<QuiltPlan>& quilts) {
    Plan plan;
    plan.quilts = quilts;
    auto crew = planCrew(session, quilts);
    plan.tasks = std::move(crew.tasks);
    plan.findings = std::move(crew.findings);
    plan.finish = crew.finish;
    plan.finishBound = crew.bound;
    return plan;
}

EventKind tickFor(const Task& t) {
    switch (t.kind) {
    case TaskKind::dotLower:
        return EventKind::zoneDotted;
    case TaskKind::dotUpper:
    case TaskKind::placeOpen:
        return EventKind::zoneOpened;
    case TaskKind::closePins:
        return EventKind::zoneClosed;
    case TaskKind::press:
        return EventKind::zoneClosed;
    default:
        return EventKind::stepDone;
    }
}

// Reports everything whose planned end has come, in order, each pass released as soon as it may be.
Played playedUntil(const Session& session, const Plan& plan, Seconds now) {
    std::vector<Event> events(1);
    events[0].id = "start";
    events[0].kind = EventKind::sessionStarted;
    events[0].atMs = made::kStartMs;
    auto tasks = plan.tasks;
    std::ranges::stable_sort(tasks, {}, &Task::end);
    const auto report = [&events](Event e) {
        e.id = "e" + std::to_string(events.size());
        events.push_back(std::move(e));
    };
    for (const auto& t : tasks) {
        if (t.end > now)
            break;
        Event e;
        e.atMs = made::kStartMs + t.end.count() * 1000;
        e.job = t.job;
        e.pass = t.pass;
        e.kind = tickFor(t);
        e.zone = t.zone;
        if (t.zone.empty() || t.share)
            e.task = t.id;
        else if (t.id.ends_with(".2"))
            e.kind = EventKind::zonePressed; // from the back
        e.person = t.people.empty() ? "" : t.people.front();
        report(e);
        if (t.kind == TaskKind::checkUnderside) {
            e.kind = EventKind::passReleased;
            report(e);
        }
    }
    Played out{session, plan, fold(plan, session.setting, events), {}, events};
    // People come when they said.
    for (const auto& h : session.setting.helpers)
        if (h.from && (h.from->sinceMidnight - session.setting.start.sinceMidnight) <= now)
            out.state.present.insert(h.name);
    out.options.now = now;
    for (const Task* t : made::workedOn(plan, out.state, now))
        out.options.inHand.emplace(t->id, now - t->start);
    for (const auto& t : plan.tasks)
        if (t.kind == TaskKind::cool && t.start < now)
            out.options.inHand.emplace(t.id, now - t.start);
    return out;
}

// The n-th made afternoon that has a good first plan.
class GoodAfternoon : public ::testing::TestWithParam<int> {
protected:
    void SetUp() override {
        for (int good = 0; good <= GetParam(); good += !anyStop(plan_.findings)) {
            const auto made = made::anyAfternoon(++seed_);
            session_ = made.session;
            plan_ = planOf(made.session, made.quilts);
        }
        dice_ = Dice{seed_ * 7919};
    }

    Seconds anyMoment() {
        return Seconds{dice_.between(0, static_cast<int>(plan_.finish.count()))};
    }

    Session session_;
    Plan plan_;
    Dice dice_{0};
    std::uint64_t seed_ = 0;
};

TEST_P(GoodAfternoon, OnTimeWithNothingChangedTheRestIsNoLongerThanItWas) {
    for (int moment = 0; moment < 2; ++moment) {
        const auto p = playedUntil(session_, plan_, anyMoment());
        ASSERT_THAT(p.state.ignored, IsEmpty()) << "seed " << seed_;
        const auto next = replan(p.session, p.plan, p.state, p.options);
        EXPECT_THAT(made::brokenByReplan(p.session, p.plan, next, p.state, p.options), IsEmpty())
            << "seed " << seed_ << " at " << p.options.now.count();
        EXPECT_LE((next.finish - p.options.now).count(),
                  1.05 * double((plan_.finish - p.options.now).count()) + 30)
            << "seed " << seed_ << " at " << p.options.now.count();
        EXPECT_EQ(replan(p.session, p.plan, p.state, p.options), next) << "same input, same plan";
    }
}

TEST_P(GoodAfternoon, PeopleComeGoAndChangePaceAndTheRulesStillHold) {
    auto p = playedUntil(session_, plan_, anyMoment());
    if (p.state.present.size() > 1 && !dice_.once(3))
        p.state.present.erase(p.state.present.begin());
    if (dice_.once(2)) {
        auto guest = made::helper("Guest", 1.0, 40);
        p.session.setting.helpers.push_back(guest);
        p.state.present.insert("Guest");
    }
    for (const auto& who : p.state.present)
        p.options.pace[who] = dice_.between(5, 20) / 10.0;
    const auto next = replan(p.session, p.plan, p.state, p.options);
    EXPECT_THAT(made::brokenByReplan(p.session, p.plan, next, p.state, p.options), IsEmpty())
        << "seed " << seed_ << " at " << p.options.now.count();
    const bool nobodys = std::ranges::any_of(next.tasks, [&p](const Task& t) {
        return t.people.empty() && t.kind != TaskKind::cool && !p.state.doneTasks.contains(t.id);
    });
    EXPECT_TRUE(!nobodys || anyStop(next.findings)) << "work is nobody's, unsaid";

    // Plan again from the result, a little later: nothing is lost on the way.
    p.options.now += Seconds{60};
    const auto third = replan(p.session, next, p.state, p.options);
    EXPECT_EQ(third.tasks.size(), plan_.tasks.size());
}

// Any of the things that happen at a table, proposed and taken: nothing that is done or open is
// lost, the rules hold, and patience would win little.
TEST_P(GoodAfternoon, WhateverChangesTheRestKeepsWhatIsDoneAndTheRules) {
    using Kind = Change::Kind;
    const auto p = playedUntil(session_, plan_, anyMoment());
    auto events = p.events;
    const std::int64_t nowMs = made::kStartMs + p.options.now.count() * 1000;
    const auto add = [&](Event e) {
        e.id = "c" + std::to_string(events.size());
        e.atMs = nowMs;
        events.push_back(std::move(e));
    };
    for (const auto& who : p.state.present) {
        Event in;
        in.kind = EventKind::personIn;
        in.person = who;
        add(in);
    }
    const auto& helpers = session_.setting.helpers;
    const auto anybody = [&] {
        return helpers[std::size_t(dice_.upTo(int(helpers.size())))].name;
    };
    for (const Kind kind : {Kind::personOut, Kind::personIn, Kind::swap, Kind::guest, Kind::irons,
                            Kind::pins, Kind::tables, Kind::handOver, Kind::planAgain}) {
        const auto quilt = dice_.upTo(int(plan_.quilts.size()));
        const auto& zones = plan_.quilts[std::size_t(quilt)].zones;
        const Change change{.kind = kind,
                            .person = kind == Kind::guest ? "Guest" : anybody(),
                            .other = anybody(),
                            .job = quilt,
                            .zone = zones[std::size_t(dice_.upTo(int(zones.size())))].id,
                            .count = dice_.once(2) ? 1 : -1};
        const auto before = fold(plan_, session_.setting, events);
        const auto proposed = propose(session_, plan_, events, before, change, nowMs);
        if (!proposed.refused.empty()) {
            EXPECT_TRUE(proposed.refused.english().ends_with('.')) << proposed.refused;
            continue;
        }
        const auto kept = events;
        for (const auto& fact : proposed.facts)
            add(fact);
        const auto state = fold(plan_, session_.setting, events);
        auto session = sessionInForce(session_, plan_, events);
        const auto options = replanNow(plan_, session.setting, state, events, nowMs);
        EXPECT_THAT(made::brokenByReplan(session, plan_, proposed.plan, state, options), IsEmpty())
            << "seed " << seed_ << " at " << p.options.now.count() << ", change " << int(kind);
        add(acceptance(proposed));
        const auto after = fold(plan_, session_.setting, events);
        EXPECT_EQ(after.zones, state.zones);
        EXPECT_EQ(after.doneTasks, state.doneTasks);
        EXPECT_EQ(planInForce(plan_, events), proposed.plan);
        EXPECT_EQ(sessionInForce(session_, plan_, events), proposed.session);

        auto patient = options;
        patient.effort = 10;
        const auto slow = replan(sessionInForce(session_, plan_, kept), plan_, state, patient);
        if (kind != Kind::handOver && kind != Kind::guest && kind != Kind::irons) {
            EXPECT_LE((proposed.finishAfter - options.now).count(),
                      1.05 * double((slow.finish - options.now).count()) + 60)
                << "seed " << seed_ << ", change " << int(kind);
        }
        events = kept;
    }
}

class SlowAfternoon : public GoodAfternoon {};

TEST_P(SlowAfternoon, TenTimesTheEffortWinsLessThanATwentieth) {
    auto p = playedUntil(session_, plan_, plan_.finish / 3);
    if (p.state.present.size() > 1)
        p.state.present.erase(p.state.present.begin());
    const auto quick = replan(p.session, p.plan, p.state, p.options);
    auto patient = p.options;
    patient.effort = 10;
    const auto slow = replan(p.session, p.plan, p.state, patient);
    EXPECT_LE((quick.finish - p.options.now).count(),
              1.05 * double((slow.finish - p.options.now).count()))
        << "seed " << seed_;
}

INSTANTIATE_TEST_SUITE_P(Made, GoodAfternoon, ::testing::Range(0, 12));
INSTANTIATE_TEST_SUITE_P(Made, SlowAfternoon, ::testing::Range(0, 3));

} // namespace
} // namespace bastewright
