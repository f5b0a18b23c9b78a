#include "planners/crew/least_finish.h"
#include "unit/crew/made_session.h"
#include "unit/crew/rules_oracle.h"
#include "unit/crew/walks_oracle.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <iostream>

using namespace bastewright;

namespace {

/// BASTEWRIGHT_AFTERNOONS says how many are gone through; docs/checks.md has what 500 have shown.
std::uint64_t afternoons(std::uint64_t most = 300) {
    const char* wanted = std::getenv("BASTEWRIGHT_AFTERNOONS");
    return wanted ? std::strtoull(wanted, nullptr, 10) : most;
}

// Of places, calls and hours; and everybody walks little and has breaks.
TEST(AnyAfternoons, KeepEveryRule) {
    for (std::uint64_t seed = 1; seed <= afternoons(); ++seed) {
        auto a = made::anyAfternoon(seed);
        const CrewPlan plan = made::plan(a, {.range = false});
        EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), testing::IsEmpty())
            << "seed " << seed;
        EXPECT_THAT(made::longLists(plan), testing::IsEmpty()) << "seed " << seed;
        EXPECT_THAT(made::brokenWalks(a.session, a.quilts, plan), testing::IsEmpty())
            << "seed " << seed;
    }
}

// What is said to be the least that a way takes, before anybody has a place.
TEST(LeastFinish, IsNeverAfterTheFinishOfAPlan) {
    int compared = 0, always = 0;
    double sum = 0;
    for (std::uint64_t seed = 1; seed <= afternoons(); ++seed) {
        auto a = made::anyAfternoon(seed);
        if (a.quilts.size() > 1)
            continue;
        const Seconds least = leastFinish(a.session, 0, a.quilts.front(), a.points.front());
        const CrewPlan plan = made::plan(a, {.range = false});
        // Where something cannot be done it is left out.
        if (std::ranges::count(plan.findings, Finding::Level::stop, &Finding::level) > 0)
            continue;
        EXPECT_LE(least, plan.finish) << "seed " << seed;
        ++compared;
        // It knows no hours.
        if (std::ranges::any_of(a.session.setting.helpers,
                                [](const Helper& h) { return h.from || h.until; }))
            continue;
        ++always;
        sum += double(plan.finish.count()) / double(least.count());
    }
    EXPECT_GT(compared, 100);
    EXPECT_LT(sum / always, 1.25);
    std::cout << "finish / least " << sum / always << " of " << always << "\n";
}

// A quilt at one end of a table much wider than it: from the far side nobody reaches it, and three
// places beside it are fewer than people.
TEST(QuiltAtTheEndOfALongTable, HasNobodyInAnybodysPlace) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        made::Dice dice{seed * 11};
        made::Afternoon a;
        a.session.setting.helpers = made::helpers(dice.between(4, 9));
        for (Helper& h : a.session.setting.helpers) {
            h.pace = 0.7 + 0.1 * dice.upTo(8);
            h.reach = Length::inches(dice.between(23, 30));
        }
        a.session.setting.helpers.back().side = kSides[std::size_t(dice.upTo(2))];
        const int width = dice.between(30, 36);
        made::addQuilt(a, {.across = 1,
                           .down = 1,
                           .freshWidth = width,
                           .freshLength = dice.between(40, 48),
                           .spacing = 3});
        QuiltPlan& quilt = a.quilts.front();
        Pass& pass = quilt.passes.front();
        pass.table.x0 = pass.table.x1 - 98_in;
        const Length ends = (72_in - pass.fresh.bounds().length()) / 2;
        pass.table.y0 = pass.fresh.bounds().y0 - ends;
        pass.table.y1 = pass.table.y0 + 72_in;
        quilt.surface.length = pass.table.width();
        quilt.surface.width = pass.table.length();
        const CrewPlan plan = made::plan(a, {.range = false});
        EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), testing::IsEmpty())
            << "seed " << seed;
    }
}

class AnyAfternoon : public testing::TestWithParam<std::uint64_t> {};

// Zones handed to people: with them, or it is said why not.
TEST_P(AnyAfternoon, KeepsZonesInTheHandsTheyWereGivenTo) {
    auto a = made::anyAfternoon(GetParam());
    auto& helpers = a.session.setting.helpers;
    made::plan(a, {.range = false});
    made::Dice dice{GetParam() * 31};
    for (std::size_t q = 0; q < a.quilts.size() && !helpers.empty(); ++q)
        for (int n = 0; n < 2; ++n) {
            auto& handed = a.session.jobs[q].handed;
            const auto& zones = a.quilts[q].zones;
            const auto& zone = zones[std::size_t(dice.upTo(int(zones.size())))].id;
            if (std::ranges::find(handed, zone, &HandedZone::zone) == handed.end())
                handed.push_back({zone, helpers[std::size_t(dice.upTo(int(helpers.size())))].name});
        }
    const CrewPlan plan = made::plan(a, {.range = false});
    for (const Task& t : plan.tasks) {
        const auto& job = a.session.jobs[std::size_t(t.job)];
        const auto wish = std::ranges::find(job.handed, t.zone, &HandedZone::zone);
        if (t.zone.empty() || wish == job.handed.end() ||
            std::ranges::count(t.people, wish->person) > 0)
            continue;
        EXPECT_TRUE(std::ranges::any_of(plan.findings,
                                        [&](const Finding& f) {
                                            return f.kind == Finding::Kind::handedElsewhere &&
                                                   f.subject == wish->person;
                                        }))
            << "seed " << GetParam() << ": " << t.id << " is not with " << wish->person
            << ", unsaid";
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyAfternoon, testing::Range<std::uint64_t>(1, 121));

// A zone that changes hands leaves all others where they are: it is new to two people, and no more
// than two neighbours stand otherwise for it.
TEST(HandedZone, ChangesNobodyElsesWork) {
    int taken = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        made::Dice dice{seed * 7};
        made::Afternoon a;
        a.session.setting.helpers = made::helpers(dice.between(2, 7));
        for (Helper& h : a.session.setting.helpers)
            h.pace = 0.7 + 0.1 * dice.upTo(7);
        a.session.setting.proposeBreaks = false;
        made::addQuilt(a, {.across = dice.between(1, 2),
                           .down = dice.between(1, 3),
                           .freshWidth = dice.between(40, 80)});
        const CrewPlan before = made::plan(a, {.range = false});
        const auto quilts = a.quilts;
        const auto& zones = quilts[0].zones;
        const std::string zone = zones[std::size_t(dice.upTo(int(zones.size())))].id;
        const std::string who =
            a.session.setting.helpers[std::size_t(dice.upTo(int(a.session.setting.helpers.size())))]
                .name;
        a.session.jobs[0].handed = {{zone, who}};
        const CrewPlan after = made::plan(a, {.range = false});
        EXPECT_EQ(quilts[0].zones, a.quilts[0].zones) << "seed " << seed;
        for (const Task& t : before.tasks) {
            const auto same = std::ranges::find(after.tasks, t.id, &Task::id);
            ASSERT_NE(same, after.tasks.end()) << t.id;
            if (t.zone == zone && same->people == std::vector{who} && t.people != same->people)
                ++taken;
            if (t.zone != zone && !t.zone.empty()) {
                EXPECT_EQ(t.people, same->people) << "seed " << seed << " " << t.id;
                EXPECT_EQ(t.places, same->places) << "seed " << seed << " " << t.id;
            }
        }
        for (std::size_t p = 0; p < quilts[0].passes.size(); ++p) {
            const auto &was = quilts[0].passes[p].stretches, &is = a.quilts[0].passes[p].stretches;
            const auto other = std::ranges::count_if(
                was, [&](const Stretch& s) { return std::ranges::find(is, s) == is.end(); });
            EXPECT_LE(other, 2) << "seed " << seed;
        }
    }
    EXPECT_GT(taken, 10); // or it says nothing
}

TEST(SameAfternoon, IsPlannedTheSameTwice) {
    for (std::uint64_t seed = 1; seed <= afternoons(12); ++seed) {
        auto a = made::anyAfternoon(seed);
        const CrewPlan once = made::plan(a);
        const auto quilts = a.quilts;
        const CrewPlan again = made::plan(a);
        EXPECT_EQ(quilts, a.quilts) << "seed " << seed;
        EXPECT_EQ(once.range, again.range) << "seed " << seed;
        EXPECT_EQ(once.tasks, again.tasks) << "seed " << seed;
        EXPECT_EQ(once.findings, again.findings) << "seed " << seed;
        EXPECT_EQ(once.bound, again.bound) << "seed " << seed;
    }
}

} // namespace
