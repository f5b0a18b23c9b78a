#include "session/table_scene.h"
#include "unit/crew/made_session.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <ostream>

namespace bastewright {
namespace {

using Where = PersonScene::Where;

// What is at a moment of the hand-made afternoon: laid to 402, zones to 467, smoothed to 541, …
struct Moment {
    int at;
    double top;
    ZoneState a1;
    int pass;
    double moved;
    Where ada;
    friend void PrintTo(const Moment& m, std::ostream* out) { *out << m.at << " s"; }
};

class ByHand : public ::testing::TestWithParam<Moment> {};

TEST_P(ByHand, IsAsOnPaper) {
    const Plan plan = made::pinnedPlan();
    const auto setting = made::smallSetting();
    const TableScenes scenes{plan, setting.helpers, setting.start};
    const auto& row = GetParam();
    const auto scene = scenes.at(0, Seconds{row.at});
    EXPECT_DOUBLE_EQ(scene.top, row.top);
    EXPECT_EQ(scene.zones[0].state, row.a1);
    EXPECT_EQ(scene.pass, row.pass);
    EXPECT_DOUBLE_EQ(scene.moved, row.moved);
    EXPECT_EQ(scene.people[0].where, row.ada);
    EXPECT_EQ(scene.people[2].where, Where::away) << "Cai comes at 14:00";
}

INSTANTIATE_TEST_SUITE_P(
    Moments, ByHand,
    ::testing::Values(Moment{0, 0, ZoneState::waiting, 1, 1, Where::atWork},
                      Moment{335, 0.5, ZoneState::waiting, 1, 1, Where::atWork},
                      Moment{402, 1, ZoneState::waiting, 1, 1, Where::atWork},
                      Moment{467, 1, ZoneState::open, 1, 1, Where::atWork},
                      Moment{605, 1, ZoneState::open, 1, 1, Where::atWork},
                      Moment{606, 1, ZoneState::closed, 1, 1, Where::atWork},
                      Moment{696, 1, ZoneState::closed, 2, 0, Where::atWork},
                      Moment{806, 1, ZoneState::closed, 2, 0.5, Where::atWork},
                      Moment{916, 1, ZoneState::closed, 2, 1, Where::atWork},
                      Moment{9'999, 1, ZoneState::closed, 2, 1, Where::waiting}));

TEST(TableScene, ZonesFillWhileTheyAreWorked) {
    const Plan plan = made::pinnedPlan();
    const auto setting = made::smallSetting();
    const TableScenes scenes{plan, setting.helpers, setting.start};
    const auto scene = scenes.at(0, Seconds{402 + 13});
    ASSERT_NE(scene.zones[0].work, nullptr);
    EXPECT_EQ(scene.zones[0].work->id, "open-A1");
    EXPECT_DOUBLE_EQ(scene.zones[0].share, 0.2);
    EXPECT_EQ(scene.going.size(), 2u);
    EXPECT_EQ(scenes.passBegins(0), (std::vector{Seconds{0}, Seconds{696}}));
}

TEST(TableScene, DotsAreFoldedBackAndForward) {
    const Plan plan = made::dottedPlan(true);
    const auto setting = made::smallSetting();
    const TableScenes scenes{plan, setting.helpers, setting.start};
    EXPECT_DOUBLE_EQ(scenes.at(0, Seconds{167}).folded, 0.5);
    EXPECT_DOUBLE_EQ(scenes.at(0, Seconds{250}).folded, 1);
    EXPECT_DOUBLE_EQ(scenes.at(0, Seconds{340}).folded, 0);
    EXPECT_EQ(scenes.at(0, Seconds{275}).zones[0].state, ZoneState::dotted);
    EXPECT_EQ(scenes.at(0, Seconds{510}).zones[0].state, ZoneState::closed);
    EXPECT_DOUBLE_EQ(scenes.at(0, Seconds{1115}).turned, 1);
    EXPECT_EQ(scenes.at(0, plan.finish).zones[1].state, ZoneState::pressedBack);
}

// Any afternoon the planner makes.
class AnyScene : public ::testing::TestWithParam<std::uint64_t> {
protected:
    void SetUp() override {
        auto made = made::anyAfternoon(GetParam());
        session = made.session;
        plan.quilts = made.quilts;
        auto crew = planCrew(session, plan.quilts, made.points);
        plan.tasks = std::move(crew.tasks);
        plan.finish = crew.finish;
        complete = !anyStop(crew.findings);
    }
    int quilts() const { return static_cast<int>(plan.quilts.size()); }
    std::vector<Seconds> moments() const {
        std::vector<Seconds> out;
        for (int k = 0; k <= 200; ++k)
            out.push_back(plan.finish * k / 200);
        for (const auto& t : plan.tasks)
            out.push_back(t.start);
        std::ranges::sort(out);
        return out;
    }

    Session session;
    Plan plan;
    bool complete = false;
};

TEST_P(AnyScene, EndsWithEverythingClosed) {
    if (!complete)
        return;
    const TableScenes scenes{plan, session.setting.helpers, session.setting.start};
    for (int q = 0; q < quilts(); ++q) {
        const auto scene = scenes.at(q, plan.finish);
        for (std::size_t z = 0; z < scene.zones.size(); ++z)
            EXPECT_GE(scene.zones[z].state, ZoneState::closed)
                << "seed " << GetParam() << ": " << plan.quilts[std::size_t(q)].zones[z].id;
        EXPECT_EQ(scene.pass, plan.quilts[std::size_t(q)].passes.back().number);
        EXPECT_TRUE(scene.going.empty());
    }
}

TEST_P(AnyScene, OnlyEverGoesForward) {
    const TableScenes scenes{plan, session.setting.helpers, session.setting.start};
    for (int q = 0; q < quilts(); ++q) {
        auto before = scenes.at(q, Seconds{});
        for (const Seconds at : moments()) {
            auto now = scenes.at(q, at);
            EXPECT_GE(now.pass, before.pass);
            EXPECT_TRUE(now.pass > before.pass || now.moved >= before.moved);
            EXPECT_GE(now.backing, before.backing);
            EXPECT_GE(now.batting, before.batting);
            EXPECT_GE(now.top, before.top);
            EXPECT_LE(now.top, now.batting) << "the top is laid on the batting";
            EXPECT_LE(now.batting, now.backing);
            for (std::size_t z = 0; z < now.zones.size(); ++z)
                EXPECT_GE(now.zones[z].state, before.zones[z].state)
                    << "seed " << GetParam() << " at " << at.count();
            before = std::move(now);
        }
    }
}

TEST_P(AnyScene, EverybodyIsWhereTheirTaskIsAndNowhereElse) {
    const TableScenes scenes{plan, session.setting.helpers, session.setting.start};
    for (const Seconds at : moments()) {
        std::vector<int> tables(session.setting.helpers.size(), 0);
        for (int q = 0; q < quilts(); ++q) {
            const auto scene = scenes.at(q, at);
            for (std::size_t p = 0; p < scene.people.size(); ++p) {
                const auto& person = scene.people[p];
                tables[p] += person.where == Where::atWork;
                if (!person.task)
                    continue;
                EXPECT_GE(std::ranges::count(person.task->people, session.setting.helpers[p].name),
                          1);
                if (person.where == Where::atWork && !person.task->places.empty()) {
                    EXPECT_EQ(person.place, person.task->places.front())
                        << "seed " << GetParam() << ": " << person.task->id;
                }
                if (person.where == Where::elsewhere) {
                    EXPECT_FALSE(person.place);
                }
            }
        }
        for (const int n : tables)
            EXPECT_LE(n, 1) << "seed " << GetParam() << " at " << at.count();
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyScene, ::testing::Range<std::uint64_t>(1, 25));

} // namespace
} // namespace bastewright
