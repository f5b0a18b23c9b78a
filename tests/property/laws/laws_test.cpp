#include "planners/whole/whole.h"
#include "property/checked_plans/random_session.h"

#include <gtest/gtest.h>

#include <algorithm>

// What must not change a plan, or only so much: laws of the whole planner, over random sessions.
namespace bastewright::testing {
namespace {

/// What a plan costs.
struct Cost {
    std::size_t points = 0, passes = 0;
    Length cloth{};
    std::size_t panels = 0;
    Seconds finish{};
    auto operator<=>(const Cost&) const = default;
    friend std::ostream& operator<<(std::ostream& out, const Cost& c) {
        return out << c.points << " points, " << c.passes << " passes, " << c.cloth.in()
                   << " in of cloth, " << c.panels << " panels, " << c.finish.count() << " s";
    }
};

Cost costOf(const Plan& plan) {
    Cost out;
    out.finish = plan.finish;
    for (const QuiltPlan& q : plan.quilts) {
        out.passes += q.passes.size();
        for (const Zone& z : q.zones)
            out.points += z.points.size();
        if (!q.backing)
            continue;
        for (const BackingPurchase& b : q.backing->buy)
            out.cloth += b.length;
        out.panels += q.backing->panels.size();
    }
    return out;
}

Cost planned(const Session& session) {
    return costOf(planWhole(session, {.effort = 0}));
}

class Laws : public ::testing::TestWithParam<std::uint64_t> {
protected:
    void SetUp() override {
        session = randomSession(GetParam());
        session.setting.room.walls.clear();
        for (Helper& h : session.setting.helpers)
            h.side = {};
        for (Job& j : session.jobs)
            j.handed.clear();
    }
    Session session;
};

TEST_P(Laws, AQuiltAndItsMirrorImageTakeTheSamePinsAndCloth) {
    Session other = session;
    for (Job& j : other.jobs) {
        const Length width = topRect(j.top).width();
        for (Segment& s : j.top.seams) {
            s.from.x = width - s.from.x;
            s.to.x = width - s.to.x;
        }
        if (j.top.grid)
            for (Length& x : j.top.grid->innerX)
                x = j.top.grid->block - x;
    }
    const Cost one = planned(session), image = planned(other);
    EXPECT_EQ(one.points, image.points);
    EXPECT_EQ(one.passes, image.passes);
    EXPECT_EQ(one.cloth, image.cloth);
    EXPECT_EQ(one.finish, image.finish);
}

TEST_P(Laws, TheOrderOfPeopleInTheFileChangesNeitherPinsNorCloth) {
    Session other = session;
    std::ranges::reverse(other.setting.helpers);
    const Cost one = planned(session), reversed = planned(other);
    EXPECT_EQ(one.points, reversed.points);
    EXPECT_EQ(one.cloth, reversed.cloth);
    EXPECT_EQ(one.panels, reversed.panels);
}

TEST_P(Laws, TheOrderOfFabricsInTheFileChangesNoCost) {
    for (Job& j : session.jobs) {
        Fabric more;
        more.name = "red";
        more.usableWidth = Length::inches(58);
        j.backing.fabrics.push_back(more);
        Fabric remnant;
        remnant.name = "grey";
        remnant.onHand = Length::inches(60);
        remnant.buyable = false;
        j.backing.fabrics.push_back(remnant);
    }
    Session other = session;
    for (Job& j : other.jobs)
        std::ranges::reverse(j.backing.fabrics);
    EXPECT_EQ(planned(session), planned(other));
}

TEST_P(Laws, TwoSessionsOfAQuiltEachNeverEndBeforeOneOfBoth) {
    if (session.jobs.size() < 2)
        GTEST_SKIP() << "of one quilt";
    Session first = session, second = session;
    first.jobs.resize(1);
    second.jobs.erase(second.jobs.begin());
    first.severalQuilts = false;
    second.severalQuilts = second.jobs.size() > 1;
    const Cost both = planned(session);
    // One after the other: the second begins when the first has ended.
    EXPECT_LE(both.finish, planned(first).finish + planned(second).finish);
}

INSTANTIATE_TEST_SUITE_P(Seeds, Laws, ::testing::Values(1U, 2U, 4U, 6U, 14U, 15U, 18U, 19U));

} // namespace
} // namespace bastewright::testing
