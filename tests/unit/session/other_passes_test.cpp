#include "checker/checker.h"
#include "planners/whole/whole.h"
#include "session/change.h"
#include "session/live_session.h"
#include "session/pins.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

/// Fewer tables or fewer pins in the middle of an afternoon: what is basted stays, what is left is
/// planned anew, and the session can be played to its end by it.
namespace bastewright {
namespace {

using Kind = Change::Kind;
using ForPins = Change::ForPins;
using ::testing::HasSubstr;

Session hall(int tables = 2) {
    Session session;
    Job& job = session.jobs.emplace_back();
    job.name = "Harbour Lights";
    job.top.width = {64_in};
    job.top.length = {80_in};
    session.setting.room.tables = {Table{.length = 48_in, .width = 30_in, .count = tables}};
    for (const char* name : {"Ada", "Bo", "Cai"})
        session.setting.helpers.emplace_back().name = name;
    session.setting.room.irons = 1;
    session.setting.stash.pins = 1000;
    return session;
}

const Plan& planOf(int tables) {
    static std::map<int, Plan> plans;
    const auto [at, isNew] = plans.try_emplace(tables);
    if (isNew)
        at->second = planWhole(hall(tables));
    return at->second;
}

struct Afternoon {
    explicit Afternoon(int tables = 2)
        : Afternoon{hall(tables), planOf(tables)} {}
    Afternoon(Session session, const Plan& plan)
        : live{std::move(session), plan} {
        add(happened::Started{});
    }

    Sentence add(What what) {
        now += 30'000;
        return live.add({"e" + std::to_string(++count), now, std::move(what)});
    }

    /// Does what may be done next, of one quilt or all, until `stop`, or nothing is left.
    template <class Stop>
    void play(Stop stop, std::optional<int> only = {}) {
        for (int taps = 0; taps < 2000 && !live.state().ended && !stop(live.state()); ++taps) {
            const auto turns = live.turns();
            std::optional<Tap> tap;
            const int quilts = static_cast<int>(live.plan().quilts.size());
            for (int k = 0; k < quilts && !tap; ++k) {
                const int job = only.value_or((taps + k) % quilts); // one after the other
                for (const NextStep& next : turns.nextSteps(job))
                    if (next.ready && (next.kind != NextStep::Kind::end || allReleased())) {
                        tap =
                            Tap{.what = next.kind == NextStep::Kind::zone      ? Tap::What::zone
                                        : next.kind == NextStep::Kind::step    ? Tap::What::step
                                        : next.kind == NextStep::Kind::release ? Tap::What::release
                                                                               : Tap::What::end,
                                .job = job,
                                .zone = next.zone,
                                .task = next.task,
                                .pass = next.pass};
                        break;
                    }
            }
            ASSERT_TRUE(tap) << "nothing may be done in pass " << turns.call(0).pass;
            const auto answer = turns.mayTick(*tap);
            ASSERT_TRUE(answer.counts()) << answer.said.english();
            ASSERT_EQ(add(answer.what), "");
        }
    }
    bool allReleased() const {
        const auto& quilts = live.plan().quilts;
        for (int job = 0; job < std::ssize(quilts); ++job)
            if (!live.state().released.contains(
                    {job, quilts[static_cast<std::size_t>(job)].passes.back().number}))
                return false;
        return true;
    }
    void playPass(int pass) {
        play([pass](const LiveState& s) { return s.released.contains({0, pass}); });
    }
    void playToTheEnd() {
        play([](const LiveState&) { return false; });
        EXPECT_TRUE(live.state().ended);
        for (const auto& [key, zone] : live.state().zones)
            EXPECT_TRUE(zone.done() || live.state().setAside.contains(key)) << key.second;
    }

    Proposal proposed(const Change& change) {
        return propose(live.session(), live.plan(), live.events(), live.state(), change, now);
    }
    void take(const Proposal& p) {
        ASSERT_EQ(p.refused, "");
        for (const What& f : p.facts)
            ASSERT_EQ(add(f), "");
        ASSERT_EQ(add(acceptance(p)), "");
        ASSERT_EQ(live.plan(), p.plan);
    }

    LiveSession live;
    std::int64_t now = 1'800'000'000'000;
    int count = 0;
};

std::vector<PlacedPoint> pointsOf(const QuiltPlan& quilt) {
    std::vector<PlacedPoint> out;
    for (const Zone& z : quilt.zones)
        out.insert(out.end(), z.points.begin(), z.points.end());
    std::ranges::sort(out);
    return out;
}

/// From the rules, without the planner: kept passes are as they were, new ones lie on tables
/// that are there, hold their points, and tile with the others the top. The checker finds
/// nothing about the new passes.
void expectSound(const Plan& before, const Plan& after, const Session& session, int kept) {
    const QuiltPlan &was = before.quilts.front(), &is = after.quilts.front();
    ASSERT_GT(static_cast<int>(is.passes.size()), kept);
    double area = 0;
    for (const Pass& p : is.passes) {
        area += areaSquareInches(p.fresh);
        const auto at = static_cast<std::size_t>(p.number - 1);
        if (p.number <= kept) {
            EXPECT_EQ(p.table, was.passes[at].table) << p.number;
            EXPECT_EQ(p.fresh, was.passes[at].fresh) << p.number;
            EXPECT_EQ(p.zones, was.passes[at].zones) << p.number;
            continue;
        }
        const auto [least, most] = std::minmax(p.table.width(), p.table.length());
        EXPECT_EQ(most, is.surface.length) << p.number;
        EXPECT_EQ(least, is.surface.width) << p.number;
        for (const Zone& z : is.zones)
            for (const PlacedPoint& point : z.points) {
                EXPECT_TRUE(z.pass != p.number || p.field.contains(point.at)) << z.id;
            }
    }
    EXPECT_NEAR(area, 64 * 80, 0.1);
    for (std::size_t a = 0; a < is.passes.size(); ++a)
        for (std::size_t b = a + 1; b < is.passes.size(); ++b)
            for (const Rect& part : is.passes[a].fresh.parts)
                EXPECT_FALSE(is.passes[b].fresh.overlaps(part)) << a << ", " << b;
    for (const Finding& f : checkPlan(session, after))
        for (const Pass& p : is.passes)
            if (p.number > kept) {
                EXPECT_THAT(f.text.english(),
                            ::testing::Not(HasSubstr("pass " + std::to_string(p.number) + ":")));
            }
}

TEST(OtherPasses, ATableLessBetweenPassesPlansTheRestOnWhatIsThere) {
    Afternoon a;
    a.playPass(1);
    const Plan before = a.live.plan();
    ASSERT_GT(before.quilts.front().passes.size(), 1u);
    const auto p = a.proposed({.kind = Kind::tables, .count = -1});
    ASSERT_EQ(p.refused, "");
    expectSound(before, p.plan, p.session, 1);
    EXPECT_EQ(pointsOf(p.plan.quilts.front()), pointsOf(before.quilts.front()));
    EXPECT_EQ(p.plan.quilts.front().surface.tables.size(), 1u);
    EXPECT_GE(p.after.passes, p.before.passes);
    EXPECT_EQ(p.after.pins, p.before.pins) << "the pins stay where they were planned";
    EXPECT_GE(p.finishAfter, p.finishBefore);
    a.take(p);
    EXPECT_TRUE(a.live.state().zones.at({0, before.quilts.front().passes[0].zones[0]}).done());
    a.playToTheEnd();
    EXPECT_TRUE(a.live.state().cautions.empty());
}

TEST(OtherPasses, APassThatIsBegunIsFinishedWhereItLies) {
    Afternoon a;
    a.play([](const LiveState& s) {
        return std::ranges::any_of(s.zones,
                                   [](const auto& z) { return z.second.state == ZoneState::open; });
    });
    const Plan before = a.live.plan();
    const auto p = a.proposed({.kind = Kind::tables, .count = -1});
    ASSERT_EQ(p.refused, "");
    EXPECT_THAT(p.said.front().english(), HasSubstr("Pass 1 is finished where it lies"));
    expectSound(before, p.plan, p.session, 1);
    a.take(p);
    a.playToTheEnd();
}

TEST(OtherPasses, WhatIsPressedFromTheBackComesAfterThePassesThatAreNew) {
    Session session = hall();
    session.jobs[0].basting.with = Basting::With::dots;
    session.jobs[0].batting.thickness = 12_mm;
    Afternoon a{session, planWhole(session, {.effort = 0})};
    a.play([](const LiveState& s) {
        return std::ranges::any_of(
            s.zones, [](const auto& z) { return z.second.state == ZoneState::dotted; });
    });
    const auto p = a.proposed({.kind = Kind::tables, .count = -1});
    ASSERT_EQ(p.refused, "");
    const auto turn = std::ranges::find(p.plan.tasks, TaskKind::turnOver, &Task::kind);
    ASSERT_NE(turn, p.plan.tasks.end());
    int fromBack = 0;
    for (const Task& t : p.plan.tasks)
        if (t.id.ends_with(".press.back")) {
            ++fromBack;
            EXPECT_GE(t.start, turn->end) << t.id;
        }
    EXPECT_GT(fromBack, 0);
}

TEST(OtherPasses, WhoLeavesWhileAPassIsFinishedIsNotPlannedForAfterIt) {
    Session session = hall();
    session.setting.helpers[1].until =
        ClockTime{session.setting.start.sinceMidnight + std::chrono::minutes{70}};
    Afternoon a{session, planWhole(session, {.effort = 0})};
    a.play([](const LiveState& s) {
        return std::ranges::any_of(s.zones,
                                   [](const auto& z) { return z.second.state == ZoneState::open; });
    });
    const auto p = a.proposed({.kind = Kind::tables, .count = -1});
    ASSERT_EQ(p.refused, "");
    for (const Task& t : p.plan.tasks)
        if (std::ranges::find(t.people, session.setting.helpers[1].name) != t.people.end()) {
            EXPECT_LE(t.end, Seconds{70 * 60}) << t.id;
        }
}

TEST(OtherPasses, BeforeAnythingLiesTheWholeQuiltIsPlannedAnew) {
    Afternoon a;
    const auto p = a.proposed({.kind = Kind::tables, .count = -1});
    ASSERT_EQ(p.refused, "");
    EXPECT_EQ(p.plan.quilts.front().passes, planOf(1).quilts.front().passes);
    a.take(p);
    a.playToTheEnd();
}

TEST(OtherPasses, ATableMoreIsUsedWhereItSavesPassesAndLeftWhereItDoesNot) {
    Afternoon a{1};
    a.playPass(1);
    const Plan before = a.live.plan();
    const auto more = a.proposed({.kind = Kind::tables, .count = 1});
    ASSERT_EQ(more.refused, "");
    EXPECT_LT(more.after.passes, more.before.passes);
    expectSound(before, more.plan, more.session, 1);
    a.take(more);
    a.playToTheEnd();

    Afternoon enough;
    enough.playPass(1);
    const auto none = enough.proposed({.kind = Kind::tables, .count = 4});
    ASSERT_EQ(none.refused, "");
    EXPECT_LE(none.after.passes, none.before.passes);
}

TEST(OtherPasses, WhereNoTableServesThatOneIsGoneCanBeNoted) {
    Session session = hall();
    session.setting.room.tables.push_back({.length = 24_in, .width = 12_in});
    Afternoon a{session, planOf(2)};
    a.playPass(1);
    const auto p = a.proposed({.kind = Kind::tables, .count = -2});
    EXPECT_THAT(p.refused.english(), HasSubstr("cannot be basted on these tables"));
    ASSERT_EQ(p.facts.size(), 1u);
    EXPECT_EQ(a.add(p.facts.front()), "");
    EXPECT_EQ(a.live.session().setting.room.tables.size(), 1u);
    EXPECT_TRUE(p.plan.quilts.empty());
}

// Who is seated does not reach the middle of the table, so only from an end works.
TEST(OtherPasses, AStartThatWasAskedForAndIsNotHadIsStillSaid) {
    Session session = hall(1);
    session.jobs.front().top = {{40_in}, {60_in}, {}, {}, {}};
    session.jobs.front().basting.start = Basting::Start::centred;
    session.setting.room.tables.front() = {.length = 30_in, .width = 30_in};
    session.setting.helpers.resize(1);
    session.setting.helpers.front().seated = true;
    const auto said = [](const Plan& plan) {
        return std::ranges::count(plan.findings, Finding::Kind::otherStart, &Finding::kind);
    };
    Afternoon a{session, planWhole(session)};
    ASSERT_EQ(said(a.live.plan()), 1);
    a.playPass(1);
    const auto p = a.proposed({.kind = Kind::tables, .count = 1});
    ASSERT_EQ(p.refused, "");
    EXPECT_LT(p.plan.quilts[0].passes.size(), a.live.plan().quilts[0].passes.size());
    EXPECT_EQ(said(p.plan), 1);
}

TEST(OtherPasses, WithoutAnyTableTheRestIsBastedOnTheFloor) {
    Afternoon a;
    a.playPass(1);
    const auto p = a.proposed({.kind = Kind::tables, .count = -2});
    ASSERT_EQ(p.refused, "");
    EXPECT_TRUE(p.plan.quilts.front().surface.floor);
    EXPECT_EQ(p.after.passes, 1);
    EXPECT_EQ(p.plan.quilts.front().passes.back().field, (Rect{{}, {}, 64_in, 80_in}));
    a.take(p);
    a.playToTheEnd();
}

/// Harbour Lights and a smaller quilt beside it, each on tables of its own.
Session hallOfTwo(std::vector<Table> tables) {
    Session session = hall();
    Job& job = session.jobs.emplace_back();
    job.name = "Low Tide";
    job.top.width = {72_in};
    job.top.length = {90_in};
    for (const char* name : {"Dot", "Eve", "Fay"})
        session.setting.helpers.emplace_back().name = name;
    session.setting.room.tables = std::move(tables);
    session.setting.stash.pins = 3000;
    return session;
}

bool lieApart(const Plan& plan) {
    return plan.quilts[0].surface.number != plan.quilts[1].surface.number;
}

/// The tables of quilts that are not finished, those on one surface once.
int tablesUsed(const Plan& plan) {
    std::map<int, std::size_t> used;
    for (const QuiltPlan& q : plan.quilts)
        used[q.surface.number] = std::max(used[q.surface.number], q.surface.tables.size());
    std::size_t all = 0;
    for (const auto& [number, count] : used)
        all += count;
    return static_cast<int>(all);
}

const Plan& planOfTwo() {
    static const Plan plan =
        planWhole(hallOfTwo({Table{.length = 48_in, .width = 30_in, .count = 4}}));
    return plan;
}

TEST(SeveralQuilts, ATableLessPlansTheRestOfTheQuiltThatLosesIt) {
    const Session session = hallOfTwo({Table{.length = 48_in, .width = 30_in, .count = 4}});
    ASSERT_TRUE(lieApart(planOfTwo()));
    const int before = tablesUsed(planOfTwo());
    Afternoon a{session, planOfTwo()};
    a.play([](const LiveState& s) {
        return s.released.contains({0, 1}) && s.released.contains({1, 1});
    });
    const Plan was = a.live.plan();
    const auto p = a.proposed({.kind = Kind::tables, .count = before - 5});
    ASSERT_EQ(p.refused, "");
    for (std::size_t q = 0; q < 2; ++q)
        EXPECT_EQ(pointsOf(p.plan.quilts[q]), pointsOf(was.quilts[q])) << q;
    EXPECT_LE(tablesUsed(p.plan), before - 1);
    EXPECT_THAT(p.changes,
                ::testing::Contains(::testing::ResultOf(
                    [](const Sentence& s) { return s.english(); }, HasSubstr("What is left of "))));
    a.take(p);
    a.playToTheEnd();
}

TEST(SeveralQuilts, WithTablesForOneTheyFollowOneAnother) {
    const Session session = hallOfTwo({Table{.length = 48_in, .width = 30_in, .count = 4}});
    Afternoon a{session, planOfTwo()};
    a.play([](const LiveState& s) {
        return s.released.contains({0, 1}) && s.released.contains({1, 1});
    });
    const auto p = a.proposed({.kind = Kind::tables, .count = -3});
    ASSERT_EQ(p.refused, "");
    EXPECT_EQ(tablesUsed(p.plan), 1);
    EXPECT_FALSE(lieApart(p.plan));
    a.take(p);
    a.playToTheEnd();
}

/// The last pass of Harbour Lights is on its tables, Low Tide between two passes on others, and no
/// table is free.
Afternoon firstInItsLastPass() {
    const Plan& plan = planOfTwo();
    Afternoon a{hallOfTwo({Table{.length = 48_in, .width = 30_in, .count = tablesUsed(plan)}}),
                plan};
    a.play([](const LiveState& s) { return s.released.contains({1, 1}); }, 1);
    const int last = plan.quilts[0].passes.back().number;
    a.play(
        [last](const LiveState& s) {
            return s.currentPass[0] == last && std::ranges::any_of(s.zones, [](const auto& z) {
                       return z.first.first == 0 && z.second.state == ZoneState::open;
                   });
        },
        0);
    return a;
}

TEST(SeveralQuilts, AQuiltFollowsOneInItsLastPassWhereItsOwnTablesGo) {
    Afternoon a = firstInItsLastPass();
    const Plan was = a.live.plan();
    ASSERT_TRUE(lieApart(was));
    ASSERT_EQ(a.live.state().released.count({1, was.quilts[1].passes.back().number}), 0u);
    const int stay = static_cast<int>(was.quilts[0].surface.tables.size());
    const auto p = a.proposed({.kind = Kind::tables, .count = stay - tablesUsed(was)});
    ASSERT_EQ(p.refused, "");
    EXPECT_FALSE(lieApart(p.plan));
    EXPECT_EQ(p.plan.quilts[0].surface, was.quilts[0].surface);
    EXPECT_EQ(p.plan.quilts[0].passes.back().table, was.quilts[0].passes.back().table);
    EXPECT_EQ(tablesUsed(p.plan), stay);
    EXPECT_EQ(pointsOf(p.plan.quilts[1]), pointsOf(was.quilts[1]));
    a.take(p);
    a.playToTheEnd();
}

TEST(SeveralQuilts, ATableMoreDoesNotGiveAwayThoseUnderALastPass) {
    Afternoon a = firstInItsLastPass();
    const Plan was = a.live.plan();
    for (int more = 1; more <= 3; ++more) {
        const auto p = a.proposed({.kind = Kind::tables, .count = more});
        ASSERT_EQ(p.refused, "");
        EXPECT_LE(tablesUsed(p.plan), tablesUsed(was) + more);
        EXPECT_EQ(p.plan.quilts[0].surface, was.quilts[0].surface);
    }
}

TEST(SeveralQuilts, APassThatIsBegunIsFinishedWhereItLies) {
    const Session session = hallOfTwo({Table{.length = 48_in, .width = 30_in, .count = 4}});
    Afternoon a{session, planOfTwo()};
    a.play([](const LiveState& s) {
        return std::ranges::any_of(s.zones, [](const auto& z) {
            return z.first.first == 1 && z.second.state == ZoneState::open;
        });
    });
    const auto p = a.proposed({.kind = Kind::tables, .count = -3});
    ASSERT_EQ(p.refused, "");
    EXPECT_THAT(p.said.front().english(), HasSubstr("is finished where it lies"));
    a.take(p);
    a.playToTheEnd();
}

/// So many pins that the zones still waiting lack `missing`.
Change shortBy(Afternoon& a, std::int64_t missing, ForPins help) {
    const auto pins = countPins(a.live.plan(), a.live.session().setting, a.live.state());
    return {.kind = Kind::pins,
            .count = static_cast<int>(pins.toPlace - missing - pins.left),
            .forPins = help};
}

TEST(ShortOfPins, WiderRowsDoWithThePinsThatAreThereAndLeaveNoHole) {
    Afternoon a;
    a.playPass(1);
    const Plan before = a.live.plan();
    EXPECT_TRUE(a.proposed(shortBy(a, 30, ForPins::nothing)).pinsShort);
    const auto p = a.proposed(shortBy(a, 30, ForPins::widerRows));
    ASSERT_EQ(p.refused, "");
    EXPECT_FALSE(p.pinsShort);
    EXPECT_LE(p.after.pins, p.before.pins - 30);
    const Length spacing = p.session.jobs.front().basting.spacing;
    EXPECT_GT(spacing, a.live.session().jobs.front().basting.spacing);
    expectSound(before, p.plan, p.session, 1);
    const auto points = pointsOf(p.plan.quilts.front());
    const double r = spacing.in() / std::sqrt(2.0) + 0.125;
    double farthest = 0;
    for (double x = 0; x <= 64; x += 0.25)
        for (double y = 0; y <= 80; y += 0.25) {
            double least = 1e9;
            for (const PlacedPoint& q : points)
                least = std::min(least, std::hypot(q.at.x.in() - x, q.at.y.in() - y));
            farthest = std::max(farthest, least);
        }
    EXPECT_LE(farthest, r);
    a.take(p);
    a.playToTheEnd();
}

TEST(ShortOfPins, RowsOfAPassThatIsBegunStay) {
    Afternoon a;
    a.play([](const LiveState& s) {
        return std::ranges::any_of(s.zones,
                                   [](const auto& z) { return z.second.state == ZoneState::open; });
    });
    EXPECT_THAT(a.proposed(shortBy(a, 30, ForPins::widerRows)).refused.english(),
                HasSubstr("Finish pass 1 first"));
}

TEST(ShortOfPins, DotsStandInForAsManyAsAreMissing) {
    Afternoon a;
    a.playPass(1);
    const auto p = a.proposed(shortBy(a, 20, ForPins::dots));
    ASSERT_EQ(p.refused, "");
    EXPECT_FALSE(p.pinsShort);
    EXPECT_EQ(p.session.jobs.front().basting.whereShort, Basting::With::dots);
    EXPECT_TRUE(std::ranges::any_of(p.changes, [](const Sentence& s) {
        return s.english().find("Pins run short: all of pass") != std::string::npos;
    })) << "a pass that is not begun has them in its plan";
    EXPECT_EQ(p.note, Sentence{});
    std::int64_t pins = 0, dots = 0;
    for (const Zone& z : p.plan.quilts.front().zones)
        (z.with ? dots : pins) += std::ssize(z.points);
    EXPECT_GT(dots, 0);
    EXPECT_EQ(p.after.pins + dots, p.before.pins);
    a.take(p);
    EXPECT_TRUE(a.live.state().setAside.empty());
    a.playToTheEnd();
    EXPECT_EQ(countPins(a.live.plan(), a.live.session(), a.live.state()).out, pins)
        << "no pin is in the zones with dots";
}

// Once they last again everybody pins, and dots that are pressed stay.
TEST(ShortOfPins, PinsThatAreFetchedTakeTheirPlaceAgain) {
    Afternoon a;
    a.playPass(1);
    const Plan before = a.live.plan();
    a.take(a.proposed(shortBy(a, 20, ForPins::dots)));
    const auto hasDots = [](const Plan& plan) {
        return std::ranges::any_of(plan.quilts.front().zones,
                                   [](const Zone& z) { return z.with.has_value(); });
    };
    ASSERT_TRUE(hasDots(a.live.plan()));
    const auto p = a.proposed({.kind = Kind::pins, .count = 500});
    ASSERT_EQ(p.refused, "");
    EXPECT_FALSE(hasDots(p.plan));
    EXPECT_EQ(p.after.pins, countPins(before, a.live.session(), a.live.state()).toPlace);
    a.take(p);
    a.playToTheEnd();
}

// A session of which dots were asked for from the first: whatever is found missing on the way, the
// plan of the rest has them where nothing is begun.
TEST(ShortOfPins, WhereTheQuiltAsksForDotsThePlanOfTheRestHasThem) {
    Session session = hall();
    session.jobs.front().basting.whereShort = Basting::With::dots;
    Afternoon a{session, planWhole(session)};
    a.playPass(1);
    const auto p = a.proposed(shortBy(a, 1, ForPins::nothing));
    ASSERT_EQ(p.refused, "");
    EXPECT_FALSE(p.pinsShort);
    EXPECT_LT(p.after.pins, p.before.pins);
    a.take(p);
    a.playToTheEnd();
}

TEST(ShortOfPins, InAPassThatIsBegunZonesAreLeftOutForDots) {
    Afternoon a;
    const int last = a.live.plan().quilts.front().passes.back().number;
    a.playPass(last - 1);
    a.play([&](const LiveState& s) {
        return std::ranges::any_of(a.live.plan().quilts.front().zones, [&](const Zone& z) {
            return z.pass == last && !z.points.empty() &&
                   s.zones.at({0, z.id}).state == ZoneState::open;
        });
    });
    const auto p = a.proposed(shortBy(a, 20, ForPins::dots));
    ASSERT_EQ(p.refused, "");
    EXPECT_FALSE(p.pinsShort);
    EXPECT_THAT(p.said.front().english(), HasSubstr("Fuse dots in place of pins"));
    EXPECT_EQ(p.note, p.said.front());
    a.take(p);
    EXPECT_FALSE(a.live.state().setAside.empty());
    a.playToTheEnd();
}

// Zones that are left out are known by their names: other passes would have others.
TEST(LeftOut, OtherPassesAreNotPlannedWhereZonesAreLeftOut) {
    Afternoon a;
    a.playPass(1);
    a.take(a.proposed({.kind = Kind::abandon}));
    ASSERT_FALSE(a.live.state().setAside.empty());
    EXPECT_THAT(a.proposed({.kind = Kind::tables, .count = -1}).refused.english(),
                HasSubstr("some zones get fuse dots or are left out"));
}

TEST(ShortOfPins, DotsNeedAnIronAndABattingThatTakesIt) {
    Session cold = hall(), melts = hall();
    cold.setting.room.irons = 0;
    melts.jobs.front().batting.meltable = true;
    Afternoon withoutIron{cold, planOf(2)}, withMelting{melts, planOf(2)};
    const auto p = withoutIron.proposed(shortBy(withoutIron, 20, ForPins::dots));
    EXPECT_THAT(p.refused.english(), HasSubstr("Fuse dots want an iron"));
    EXPECT_EQ(p.facts.size(), 1u) << "the pins are missing all the same";
    EXPECT_THAT(withMelting.proposed(shortBy(withMelting, 20, ForPins::dots)).refused.english(),
                HasSubstr("the batting does not take an iron"));
}

TEST(ShortOfPins, FewerZonesTodayEndWhereThePinsEnd) {
    Afternoon a;
    const auto all = a.live.plan().finish;
    const auto p = a.proposed(shortBy(a, 60, ForPins::fewerZones));
    ASSERT_EQ(p.refused, "");
    EXPECT_LT(p.plan.finish, all);
    std::int64_t taken = 0;
    for (const Task& t : p.plan.tasks)
        if (t.kind == TaskKind::placeOpen)
            for (const Zone& z : p.plan.quilts.front().zones)
                if (z.id == t.zone)
                    taken += std::ssize(z.points);
    EXPECT_LE(taken, p.before.pins - 60);
    EXPECT_GT(taken, 0);
    EXPECT_THAT(p.said.front().english(), HasSubstr("60 pins more"));
    for (const Task& t : p.plan.tasks)
        for (const auto& id : t.after)
            EXPECT_TRUE(
                std::ranges::any_of(p.plan.tasks, [&](const Task& o) { return o.id == id; }))
                << t.id << " waits for " << id;
    a.take(p);
    // With pins the rest is taken up again.
    const auto more = a.proposed({.kind = Kind::pins, .count = 60});
    ASSERT_EQ(more.refused, "");
    a.take(more);
    a.playToTheEnd();
}

} // namespace
} // namespace bastewright
