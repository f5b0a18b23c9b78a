#include "planners/crew/crew.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace bastewright {
namespace {

/// One quilt and so many people of equal skill, pace and hours.
class EqualPeople : public testing::TestWithParam<int> {};

// Busiest and least busy differ by a tenth at most, team work included, where there are two passes
// or more: in a single one the few tasks of the whole pass cannot be shared out without a wait.
TEST_P(EqualPeople, HaveAboutTheSameToDo) {
    for (int seed = 0; seed < 40; ++seed) {
        made::Dice dice{std::uint64_t(seed) * 977 + 5};
        Session session;
        std::vector<QuiltPlan> quilts;
        made::Shape shape;
        shape.across = dice.between(1, 3);
        shape.down = dice.between(shape.across == 1 ? 2 : 1, 3);
        shape.zonesAcross = dice.between(3, 5);
        shape.zonesDown = 2;
        made::addQuilt(session, quilts, shape);
        session.setting.helpers = made::helpers(GetParam());
        const CrewPlan plan = planCrew(session, quilts);
        std::map<std::string, double> busy;
        for (const Helper& h : session.setting.helpers)
            busy[h.name] = 0;
        for (const Task& t : plan.tasks)
            for (const auto& who : t.people)
                busy[who] += double(Seconds{t.end - t.start}.count());
        double least = 1e18, most = 0;
        for (const auto& [who, seconds] : busy) {
            least = std::min(least, seconds);
            most = std::max(most, seconds);
        }
        EXPECT_LE(most, 1.1 * least) << "seed " << seed;
    }
}
INSTANTIATE_TEST_SUITE_P(People, EqualPeople, testing::Values(2, 3, 4, 6));

} // namespace
} // namespace bastewright
