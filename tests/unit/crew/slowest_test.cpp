#include "planners/crew/afternoons.h"
#include "planners/crew/slowest.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

using namespace bastewright;

namespace {

// The middle of the largest of n equal lognormal times: F(x)^n = 1/2. For a spread of 0.2915 (0.25
// among people and 0.15 from one piece to the next) these are the factors that simulations of
// afternoons had given.
TEST(Slowest, OfEqualTimesIsAFactor) {
    const double spread = crew::spreadOfWork();
    const std::vector<std::pair<std::size_t, double>> rows{
        {1, 1.0}, {2, 1.17}, {3, 1.27}, {4, 1.34}, {5, 1.39}, {6, 1.43}, {8, 1.50}};
    for (const auto& [n, factor] : rows)
        EXPECT_NEAR(crew::middleOfSlowest(std::vector<double>(n, 100.0), spread), 100 * factor, 0.6)
            << n;
}

TEST(Slowest, OfUnequalTimesLiesBetweenTheLongestAndAllAsLong) {
    const std::vector<double> times{100, 60, 20};
    const double middle = crew::middleOfSlowest(times, crew::spreadOfWork());
    EXPECT_GT(middle, 100);
    EXPECT_LT(middle, 127);
    EXPECT_EQ(crew::middleOfSlowest(std::vector<double>{0, 80, 0}, 0.3), 80);
}

// The bound of the work against a thousand ways to deal it out.
TEST(Slowest, NoDealIsBeyondTheMostWork) {
    made::Dice dice{3};
    for (int k = 0; k < 1000; ++k) {
        std::vector<double> paces, times;
        double work = 0;
        for (int n = dice.between(1, 6); n > 0; --n) {
            paces.push_back(0.5 + 0.1 * dice.upTo(11));
            times.push_back(double(dice.between(1, 100)));
            work += paces.back() * times.back();
        }
        const double middle = crew::middleOfSlowest(times, crew::spreadOfWork());
        EXPECT_LE(work / middle, crew::mostWorkInASecond(paces) * (1 + 1e-9));
    }
}

// Plan and simulation agree: the plan's finish is about the middle of its afternoons.
TEST(Afternoons, MiddleIsThePlansFinish) {
    for (const int people : {1, 2, 4, 8}) {
        made::Afternoon a;
        a.session.setting.helpers = made::helpers(people);
        made::addQuilt(a, {});
        const CrewPlan plan = made::plan(a);
        EXPECT_NEAR(double(plan.range.middle.count()), double(plan.finish.count()),
                    0.05 * double(plan.finish.count()))
            << people << " people";
        EXPECT_LT(double(plan.range.early.count()), 0.9 * double(plan.finish.count()));
        EXPECT_GT(double(plan.range.late.count()), 1.15 * double(plan.finish.count()));
    }
}

} // namespace
