#include "unit/crew/made_session.h"
#include "unit/crew/rules_oracle.h"

#include <gmock/gmock.h>

using namespace bastewright;

namespace {

class AnyAfternoon : public testing::TestWithParam<std::uint64_t> {};

TEST_P(AnyAfternoon, KeepsEveryRule) {
    const auto a = made::anyAfternoon(GetParam());
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), testing::IsEmpty())
        << "seed " << GetParam();
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyAfternoon, testing::Range<std::uint64_t>(1, 121));

TEST(SameAfternoon, IsPlannedTheSameTwice) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const auto a = made::anyAfternoon(seed);
        const CrewPlan once = planCrew(a.session, a.quilts), again = planCrew(a.session, a.quilts);
        EXPECT_EQ(once.tasks, again.tasks) << "seed " << seed;
        EXPECT_EQ(once.findings, again.findings) << "seed " << seed;
        EXPECT_EQ(once.bound, again.bound) << "seed " << seed;
    }
}

} // namespace
