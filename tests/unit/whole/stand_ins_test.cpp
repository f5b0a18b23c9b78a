#include "checker/checker.h"
#include "job/job_json.h"
#include "plan/call.h"
#include "plan/plan_json.h"
#include "planners/whole/remedy.h"
#include "planners/whole/whole.h"
#include "ways/supplies.h"
#include "ways/way.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <functional>
#include <map>
#include <set>

/// Where the box of pins does not last and the quilt asks for dots then: which zones have them, and
/// what of the plan goes with that.
namespace bastewright {
namespace {

using ::testing::HasSubstr;

/// A quilt in several passes on one small table.
Session hall(int quilts = 1) {
    Session s;
    s.jobs.resize(static_cast<std::size_t>(quilts));
    for (Job& job : s.jobs) {
        job.name = "Quilt " + std::to_string(&job - s.jobs.data() + 1);
        job.top.width = {56_in};
        job.top.length = {70_in};
        job.basting.whereShort = Basting::With::dots;
    }
    s.severalQuilts = quilts > 1;
    s.setting.room.tables = {Table{.length = 48_in, .width = 30_in}};
    s.setting.room.irons = 1;
    for (const char* name : {"Ada", "Bo", "Cai"})
        s.setting.helpers.emplace_back().name = name;
    return s;
}

/// All of it on the table at once.
Session inOnePass() {
    Session s = hall();
    s.jobs[0].top.width = {36_in};
    s.jobs[0].top.length = {40_in};
    s.setting.room.tables = {Table{.length = 60_in, .width = 48_in}};
    return s;
}

/// The same with so many pins in the box.
Session with(Session s, std::int64_t pins) {
    s.setting.stash.pins = static_cast<int>(pins);
    return s;
}

std::int64_t points(const Session& s, const Plan& plan, Basting::With with, int quilt = -1,
                    std::optional<int> pass = {}) {
    std::int64_t out = 0;
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        if (quilt < 0 || quilt == static_cast<int>(q))
            out += pointsOf(s.jobs[q], plan.quilts[q].zones, wayOf(with), pass);
    return out;
}

std::int64_t allOf(const Plan& plan) {
    std::int64_t out = 0;
    for (const QuiltPlan& q : plan.quilts)
        out += pointsOf(q);
    return out;
}

/// In which passes of a quilt there is such work.
std::set<int> passesWith(const Plan& plan, TaskKind kind, int quilt = 0) {
    std::set<int> out;
    for (const Task& t : plan.tasks)
        if (t.kind == kind && t.job == quilt)
            out.insert(t.pass);
    return out;
}

std::set<int> passesFrom(int first, int last) {
    std::set<int> out;
    for (int p = first; p <= last; ++p)
        out.insert(p);
    return out;
}

const Finding* found(const Plan& plan, Finding::Kind kind) {
    const auto at = std::ranges::find(plan.findings, kind, &Finding::kind);
    return at == plan.findings.end() ? nullptr : &*at;
}

void expectGood(const Session& s, const Plan& plan) {
    for (const Finding& f : checkPlan(s, plan))
        ADD_FAILURE() << f.subject << " " << f.field << ": " << f.text.english();
    const PlanRead read = readPlan(writePlan(plan));
    ASSERT_TRUE(read.plan.has_value());
    EXPECT_TRUE(*read.plan == plan);
}

/// Planned by so many pins of a box that is known to be large enough.
const Plan& withEnough(int quilts) {
    static std::map<int, Plan> plans;
    const auto [at, isNew] = plans.try_emplace(quilts);
    if (isNew)
        at->second = planWhole(with(hall(quilts), 100'000));
    return at->second;
}

TEST(WherePinsRunShort, NothingChangesWhileTheyLast) {
    const Plan& enough = withEnough(1);
    const std::int64_t all = allOf(enough);
    ASSERT_GT(enough.quilts[0].passes.size(), 3u);
    Session s = with(hall(), all);
    const Plan just = planWhole(s);
    EXPECT_EQ(just.quilts, enough.quilts);
    EXPECT_EQ(just.tasks, enough.tasks);
    s.jobs[0].basting.whereShort = Basting::With::pins;
    EXPECT_EQ(planWhole(s).tasks, enough.tasks);
    s = with(hall(), 0); // nobody has said how many there are
    EXPECT_EQ(planWhole(s).tasks, enough.tasks);
}

// Whole passes from the last one back: as far as the pins go everybody pins, then everybody dots.
TEST(WherePinsRunShort, TheLastPassesGetDots) {
    const std::int64_t all = allOf(withEnough(1));
    const int last = static_cast<int>(withEnough(1).quilts[0].passes.size());
    for (const std::int64_t missing : {std::int64_t{1}, all / 4, all / 2, all - 1}) {
        SCOPED_TRACE(missing);
        const Session s = with(hall(), all - missing);
        const Plan plan = planWhole(s);
        expectGood(s, plan);
        EXPECT_EQ(allOf(plan), all) << "a dot stands where the pin would";
        const std::int64_t pins = points(s, plan, Basting::With::pins);
        EXPECT_LE(pins, s.setting.stash.pins);
        EXPECT_EQ(points(s, plan, Basting::With::dots), all - pins);
        const auto pressed = passesWith(plan, TaskKind::press);
        ASSERT_FALSE(pressed.empty());
        EXPECT_EQ(pressed, passesFrom(*pressed.begin(), last));
        const auto pinned = passesWith(plan, TaskKind::placeOpen);
        EXPECT_EQ(pinned, passesWith(plan, TaskKind::closePins));
        if (*pressed.begin() > 1) {
            EXPECT_EQ(pinned, passesFrom(1, *pressed.begin() - 1));
            EXPECT_GT(pins + points(s, plan, Basting::With::dots, 0, *pressed.begin()),
                      s.setting.stash.pins)
                << "the first of them is needed";
        }
        EXPECT_EQ(found(plan, Finding::Kind::pinsShort), nullptr);
        const Finding* said = found(plan, Finding::Kind::dotsPlanned);
        ASSERT_NE(said, nullptr);
        EXPECT_EQ(said->figures, std::vector{static_cast<int>(all - pins)});
        EXPECT_THAT(said->cure.english(), HasSubstr("Or bring " + std::to_string(missing) +
                                                    (missing == 1 ? " pin more" : " pins more")));
        const auto supply = [&](Supply::Kind kind) {
            const auto at = std::ranges::find(plan.supplies, kind, &Supply::kind);
            return at == plan.supplies.end() ? 0.0 : at->need;
        };
        EXPECT_EQ(supply(Supply::Kind::pins), double(withSpare(pins)));
        EXPECT_EQ(supply(Supply::Kind::fuseSquares), double(withSpare(2 * (all - pins))));
        EXPECT_EQ(supply(Supply::Kind::irons), 1);
    }
}

// One pass only: the zones nearest to the edge of the top, and in it dots come before pins, for
// they are pressed before anything lies on them that is open.
TEST(WherePinsRunShort, AnOnlyPassHasDotsAtTheEdgeBeforePins) {
    const std::int64_t all = allOf(planWhole(with(inOnePass(), 100'000)));
    for (const std::int64_t missing : {std::int64_t{1}, all / 3, all - 2}) {
        SCOPED_TRACE(missing);
        const Session s = with(inOnePass(), all - missing);
        const Plan plan = planWhole(s);
        ASSERT_EQ(plan.quilts[0].passes.size(), 1u);
        expectGood(s, plan);
        const auto& zones = plan.quilts[0].zones;
        const std::int64_t pins = points(s, plan, Basting::With::pins);
        EXPECT_LE(pins, s.setting.stash.pins);
        for (const Zone& z : zones) {
            if (z.with) {
                EXPECT_GT(pins + std::ssize(z.points), s.setting.stash.pins)
                    << "zone " << z.id << " need not have dots";
            }
        }
        Seconds lastPressed{}, firstPin = plan.finish;
        for (const Task& t : plan.tasks) {
            if (t.kind == TaskKind::cool)
                lastPressed = std::max(lastPressed, t.end);
            if (t.kind == TaskKind::placeOpen)
                firstPin = std::min(firstPin, t.start);
        }
        EXPECT_GT(lastPressed, Seconds{});
        EXPECT_LE(lastPressed, firstPin);
        EXPECT_NE(found(plan, Finding::Kind::dotsPlanned), nullptr);
    }
}

// The quilts share one box: those that come first keep their pins.
TEST(WherePinsRunShort, TheLastQuiltGetsDotsFirst) {
    const Plan& enough = withEnough(2);
    const std::int64_t all = allOf(enough), second = pointsOf(enough.quilts[1]);
    for (const std::int64_t missing : {std::int64_t{5}, second / 2, second + 40}) {
        SCOPED_TRACE(missing);
        const Session s = with(hall(2), all - missing);
        const Plan plan = planWhole(s);
        expectGood(s, plan);
        EXPECT_LE(points(s, plan, Basting::With::pins), s.setting.stash.pins);
        const auto first = points(s, plan, Basting::With::dots, 0);
        const auto later = second - points(s, plan, Basting::With::pins, 1, 1);
        EXPECT_TRUE(first == 0 || points(s, plan, Basting::With::dots, 1) >= later);
    }
    Session one = with(hall(2), all - second / 2);
    one.jobs[1].basting.whereShort = Basting::With::pins;
    const Plan plan = planWhole(one);
    expectGood(one, plan);
    EXPECT_EQ(points(one, plan, Basting::With::dots, 1), 0) << "it does not ask for them";
    EXPECT_GT(points(one, plan, Basting::With::dots, 0), 0);
}

// What speaks against dots is said, and the plan stays with pins.
TEST(WherePinsRunShort, NothingIsDoneWhereSomethingSpeaksAgainstIt) {
    using enum Finding::Kind;
    const std::int64_t all = allOf(withEnough(1));
    const auto refused = [&](Finding::Kind kind, const std::function<void(Session&)>& edit) {
        Session s = with(hall(), all - 30);
        edit(s);
        const Plan plan = planWhole(s);
        expectGood(s, plan);
        EXPECT_EQ(points(s, plan, Basting::With::dots), 0);
        EXPECT_NE(found(plan, pinsShort), nullptr);
        EXPECT_EQ(found(plan, dotsPlanned), nullptr);
        const Finding* why = found(plan, kind);
        ASSERT_NE(why, nullptr);
        EXPECT_EQ(why->level, Finding::Level::warn);
        EXPECT_FALSE(anyStop(plan.findings));
    };
    refused(battingMelts, [](Session& s) { s.jobs[0].batting.meltable = true; });
    refused(noIron, [](Session& s) { s.setting.room.irons = 0; });
    refused(nobodyIrons, [](Session& s) {
        for (Helper& h : s.setting.helpers)
            h.irons = false;
    });
}

// Thick batting is pressed once more from the back, where it was pressed.
TEST(WherePinsRunShort, ThickBattingIsPressedFromTheBackWhereItHasDots) {
    const std::int64_t all = allOf(withEnough(1));
    Session s = with(hall(), all * 3 / 5);
    s.jobs[0].batting.thickness = Length::millimetres(13);
    const Plan plan = planWhole(s);
    expectGood(s, plan);
    std::map<std::string, int> pressed;
    for (const Task& t : plan.tasks)
        if (t.kind == TaskKind::press)
            ++pressed[t.zone];
    for (const Zone& z : plan.quilts[0].zones)
        EXPECT_EQ(pressed[z.id], z.with && !z.points.empty() ? 2 : 0) << z.id;
    EXPECT_EQ(passesWith(plan, TaskKind::turnOver).size(), 1u);
}

// One tap: the plan that warns of missing pins offers it, with an iron where there is none.
TEST(WherePinsRunShort, IsOfferedAsACure) {
    const std::int64_t all = allOf(withEnough(1));
    Session s = with(hall(), all - 30);
    s.jobs[0].basting.whereShort = Basting::With::pins;
    const auto offered = [](const Session& of) {
        const Plan plan = planWhole(of);
        const Finding* pins = found(plan, Finding::Kind::pinsShort);
        EXPECT_NE(pins, nullptr);
        std::vector<Remedy> out = pins ? remediesFor(*pins, of, plan) : std::vector<Remedy>{};
        std::erase_if(out, [&](const Remedy& r) {
            return r.applied(of).jobs[0].basting.whereShort == of.jobs[0].basting.whereShort;
        });
        return out;
    };
    for (const int irons : {0, 1}) {
        s.setting.room.irons = irons;
        const auto remedies = offered(s);
        ASSERT_EQ(remedies.size(), 1u);
        const Session then = remedies.front().applied(s);
        EXPECT_EQ(then.setting.room.irons, 1);
        const Plan cured = planWhole(then);
        EXPECT_EQ(found(cured, Finding::Kind::pinsShort), nullptr);
        EXPECT_NE(found(cured, Finding::Kind::dotsPlanned), nullptr);
    }
    s.jobs[0].batting.meltable = true;
    EXPECT_TRUE(offered(s).empty());
}

/// A plan that was spoiled, and the rule that must notice it.
struct Spoiled {
    const char* name;
    const char* rule;
    std::function<void(Session&, Plan&)> spoil;
};

/// The zones of a pass, all of them or those with dots.
void setWith(Plan& plan, int pass, std::optional<Basting::With> with) {
    for (Zone& z : plan.quilts[0].zones)
        if (z.pass == pass && !z.points.empty())
            z.with = with;
}

TEST(WherePinsRunShort, TheCheckerNoticesWhatIsWrong) {
    const std::int64_t all = allOf(withEnough(1));
    const Session good = with(hall(), all / 2);
    const Plan plan = planWhole(good);
    const int first = *passesWith(plan, TaskKind::press).begin();
    const int last = static_cast<int>(plan.quilts[0].passes.size());
    ASSERT_GT(first, 1);
    ASSERT_LT(first, last);
    const Zone& dotted = *std::ranges::find_if(
        plan.quilts[0].zones, [](const Zone& z) { return z.with && !z.points.empty(); });
    const std::vector<Spoiled> all_{
        {"nobody asked for dots", "zones.with",
         [](Session& s, Plan&) { s.jobs[0].basting.whereShort = Basting::With::pins; }},
        {"the batting melts", "zones.with",
         [](Session& s, Plan&) { s.jobs[0].batting.meltable = true; }},
        {"as the quilt is", "zones.with",
         [&](Session&, Plan& p) { setWith(p, 1, Basting::With::pins); }},
        {"another way than was asked for", "zones.with",
         [&](Session&, Plan& p) { setWith(p, last, Basting::With::thread); }},
        {"the box holds enough", "zones.short",
         [&](Session& s, Plan&) { s.setting.stash.pins = static_cast<int>(all); }},
        {"the box holds a pass more", "zones.short",
         [&](Session& s, Plan& p) {
             s.setting.stash.pins += static_cast<int>(points(s, p, Basting::With::dots, 0, first));
         }},
        {"the box holds fewer", "zones.short",
         [](Session& s, Plan&) { s.setting.stash.pins /= 2; }},
        {"nobody has said how many", "zones.short",
         [](Session& s, Plan&) { s.setting.stash.pins = 0; }},
        {"pins after dots", "zones.short", [&](Session&, Plan& p) { setWith(p, last, {}); }},
        {"the last pass alone", "zones.short",
         [&](Session&, Plan& p) {
             setWith(p, first, {});
             setWith(p, last - 1, {});
         }},
        {"tasks of pins at dots", "crew.tasks", [&](Session&, Plan& p) { setWith(p, last, {}); }},
        {"it is not said", "plan.findings",
         [](Session&, Plan& p) {
             std::erase_if(p.findings,
                           [](const Finding& f) { return f.kind == Finding::Kind::dotsPlanned; });
         }},
        {"so many are not said", "plan.findings",
         [](Session&, Plan& p) {
             for (Finding& f : p.findings)
                 if (f.kind == Finding::Kind::dotsPlanned)
                     ++f.figures.front();
         }},
        {"no squares are brought", "supplies.needed",
         [](Session&, Plan& p) {
             std::erase_if(p.supplies,
                           [](const Supply& x) { return x.kind == Supply::Kind::fuseSquares; });
         }},
        {"it is not left to cool", "crew.tasks",
         [&](Session&, Plan& p) {
             std::erase_if(p.tasks, [&](const Task& t) {
                 return t.kind == TaskKind::cool && t.pass == last;
             });
         }},
        {"a zone is not pressed", "crew.tasks",
         [&](Session&, Plan& p) {
             std::erase_if(p.tasks, [&](const Task& t) {
                 return t.kind == TaskKind::press && t.zone == dotted.id;
             });
         }},
    };
    for (const Spoiled& one : all_) {
        Session s = good;
        Plan p = plan;
        one.spoil(s, p);
        std::set<std::string> rules;
        for (const Finding& f : checkPlan(s, p)) {
            rules.insert(f.subject);
            EXPECT_FALSE(f.field.empty() && f.subject != "plan.findings") << f.text.english();
        }
        EXPECT_TRUE(rules.contains(one.rule))
            << one.name << ": " << ::testing::PrintToString(rules);
    }
}

} // namespace
} // namespace bastewright
