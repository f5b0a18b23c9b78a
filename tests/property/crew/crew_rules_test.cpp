#include "unit/crew/made_session.h"
#include "unit/crew/rules_oracle.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <array>

using namespace bastewright;

namespace {

class AnyAfternoon : public testing::TestWithParam<std::uint64_t> {};

TEST_P(AnyAfternoon, KeepsEveryRule) {
    auto a = made::anyAfternoon(GetParam());
    const CrewPlan plan = made::plan(a, {.range = false});
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), testing::IsEmpty())
        << "seed " << GetParam();
}

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

TEST(SameAfternoon, IsPlannedTheSameTwice) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
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
