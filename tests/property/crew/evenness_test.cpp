#include "planners/crew/crew.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace bastewright {
namespace {

/// One quilt and so many people of equal skill, pace and hours.
class EqualPeople : public testing::TestWithParam<int> {};

// Busiest and least busy differ by a fifth at most, where all reach the work of every
// pass from their places.
TEST_P(EqualPeople, HaveAboutTheSameToDo) {
    for (int seed = 0; seed < 20; ++seed) {
        made::Dice dice{std::uint64_t(seed) * 977 + 5};
        made::Afternoon a;
        made::Shape shape;
        shape.across = dice.between(1, 3);
        shape.down = dice.between(shape.across == 1 ? 2 : 1, 3);
        made::addQuilt(a, shape);
        a.session.setting.helpers = made::helpers(GetParam());
        const CrewPlan plan = made::plan(a, {.range = false});
        std::map<std::string, double> busy;
        for (const Helper& h : a.session.setting.helpers)
            busy[h.name] = 0;
        for (const Task& t : plan.tasks)
            for (const auto& who : t.people)
                busy[who] += double(Seconds{t.end - t.start}.count());
        double least = 1e18, most = 0;
        for (const auto& [who, seconds] : busy) {
            least = std::min(least, seconds);
            most = std::max(most, seconds);
        }
        EXPECT_LE(most, 1.2 * least) << "seed " << seed;
    }
}
INSTANTIATE_TEST_SUITE_P(People, EqualPeople, testing::Values(2, 3, 4, 6));

} // namespace
} // namespace bastewright
