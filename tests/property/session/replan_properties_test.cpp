#include "plan/call.h"
#include "session/replan.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace bastewright {
namespace {

/// A made afternoon played by its plan up to some moment, after which somebody leaves.
class AnyMoment : public testing::TestWithParam<std::uint64_t> {
protected:
    void SetUp() override {
        a = made::anyAfternoon(GetParam());
        for (Helper& h : a.session.setting.helpers)
            h.from = h.until = {};
        const CrewPlan crew = made::plan(a, {.range = false});
        plan.quilts = a.quilts;
        plan.tasks = crew.tasks;
        plan.breaks = crew.breaks;
        plan.findings = crew.findings;
        plan.finish = crew.finish;
        made::Dice dice{GetParam() * 7};
        now = Seconds{plan.finish.count() * dice.upTo(100) / 100};
        state.started = true;
        for (const Helper& h : a.session.setting.helpers)
            state.present.insert(h.name);
        for (const Task& t : plan.tasks)
            if (t.end <= now)
                state.doneTasks.insert(t.id);
    }

    made::Afternoon a;
    Plan plan;
    LiveState state;
    Seconds now{};
};

void expectSound(const Plan& before, const Plan& after, const LiveState& state, Seconds now) {
    std::map<std::string, const Task*> ids;
    std::map<std::string, Seconds> free;
    for (const Task& t : after.tasks) {
        EXPECT_TRUE(ids.emplace(t.id, &t).second) << t.id << " twice";
        if (state.doneTasks.contains(t.id))
            continue;
        EXPECT_GE(t.start, now) << t.id;
        for (const auto& who : t.people) {
            EXPECT_TRUE(state.present.contains(who)) << t.id << ": " << who << " is not there";
            EXPECT_GE(t.start, free[who]) << who << " is busy when " << t.id << " begins";
            free[who] = std::max(free[who], t.end);
        }
        for (const auto& id : t.after)
            if (const auto at = ids.find(id); at != ids.end()) {
                EXPECT_LE(at->second->end, t.start) << t.id << " before " << id;
            }
    }
    for (const Task& t : before.tasks)
        if (state.doneTasks.contains(t.id)) {
            EXPECT_TRUE(ids.contains(t.id)) << t.id << " is forgotten";
        }
    for (std::size_t q = 0; q < before.quilts.size(); ++q) {
        std::size_t was = 0, is = 0;
        for (const Zone& z : before.quilts[q].zones)
            was += z.points.size();
        for (const Zone& z : after.quilts[q].zones) {
            is += z.points.size();
            for (const PlacedPoint& p : z.points)
                EXPECT_TRUE(z.area.contains(p.at)) << z.id;
        }
        EXPECT_EQ(was, is) << "quilt " << q;
        // What is begun stays as it is.
        for (const Task& t : before.tasks) {
            if (t.job != int(q) || t.zone.empty() || !state.doneTasks.contains(t.id))
                continue;
            const auto one = std::ranges::find(before.quilts[q].zones, t.zone, &Zone::id);
            const auto two = std::ranges::find(after.quilts[q].zones, t.zone, &Zone::id);
            ASSERT_NE(two, after.quilts[q].zones.end()) << t.zone;
            EXPECT_EQ(*one, *two) << t.zone;
        }
    }
}

TEST_P(AnyMoment, TheRestIsSoundWhoeverLeaves) {
    const Plan same = replan(a.session, plan, state, {.now = now});
    expectSound(plan, same, state, now);
    EXPECT_EQ(same, replan(a.session, plan, state, {.now = now})) << "twice the same";
    if (state.present.size() < 2)
        return;
    state.present.erase(state.present.begin());
    expectSound(plan, replan(a.session, plan, state, {.now = now}), state, now);
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyMoment, testing::Range<std::uint64_t>(1, 61));

} // namespace
} // namespace bastewright
