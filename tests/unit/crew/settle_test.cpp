#include "planners/crew/settle.h"
#include "unit/crew/made_session.h"
#include "unit/crew/rules_oracle.h"

#include <gmock/gmock.h>

#include <map>

using namespace bastewright;

namespace {

std::map<std::string, double> loads(const CrewPlan& plan) {
    std::map<std::string, double> sum;
    for (const Task& t : plan.tasks)
        for (const std::string& who : t.people)
            sum[who] += static_cast<double>((t.end - t.start).count());
    return sum;
}

TEST(Settle, EqualPeopleWorkEquallyWithinATenth) {
    for (const int people : {2, 3, 4, 6})
        for (const int zones : {3, 4, 5}) {
            made::Afternoon a;
            a.session.setting.helpers = made::helpers(people);
            made::addQuilt(a.session, a.quilts, {.zonesAcross = zones});
            const CrewPlan plan = planCrew(a.session, a.quilts);
            double least = 1e9, most = 0;
            for (const auto& [who, seconds] : loads(plan)) {
                least = std::min(least, seconds);
                most = std::max(most, seconds);
            }
            EXPECT_EQ(loads(plan).size(), static_cast<std::size_t>(people));
            EXPECT_LE(most / least, 1.10) << people << " people, " << zones << " zones across";
        }
}

TEST(Settle, EvensOutWithoutMovingTheFinishOrBreakingARule) {
    using namespace bastewright::crew;
    // Two people, six equal tasks, all given to the first as long as the second is idle.
    Problem p;
    p.people.resize(2);
    p.activities.push_back({.seconds = 120, .team = 0});
    Schedule s;
    for (int i = 0; i < 6; ++i)
        p.activities.push_back(
            {.team = 1, .modes = {{.person = 0, .seconds = 20}, {.person = 1, .seconds = 20}}});
    s.start = {0, 0, 20, 40, 60, 80, 100};
    s.end = {120, 20, 40, 60, 80, 100, 120};
    s.crew = {{}, {0}, {0}, {0}, {0}, {0}, {0}};
    s.strip.assign(7, -1);
    s.place.assign(7, 0);
    s.finish = 120;
    settle(p, s);
    EXPECT_EQ(s.finish, 120);
    EXPECT_DOUBLE_EQ(spread(p, s), 1.0);
}

TEST(Settle, NeighbouringZonesGoToTheSamePerson) {
    using namespace bastewright::crew;
    // One long edge, four tasks along it for two people in two rounds; given out crosswise at
    // first.
    Problem p;
    p.people.resize(2);
    p.strips = {{.room = 10, .lo = 0, .hi = 100, .table = 1, .round = 400}};
    for (int i = 0; i < 4; ++i) {
        const std::int64_t at = 30 * i;
        p.spots.push_back({.strip = 0, .lo = at, .hi = at, .want = at});
        p.activities.push_back(
            {.team = 1,
             .modes = {{.person = 0, .seconds = 20, .firstSpot = i, .endSpot = i + 1},
                       {.person = 1, .seconds = 20, .firstSpot = i, .endSpot = i + 1}}});
    }
    Schedule s;
    s.start = {0, 0, 20, 20};
    s.end = {20, 20, 40, 40};
    s.crew = {{0}, {1}, {1}, {0}}; // 0 → 90 and 30 → 60
    s.strip.assign(4, 0);
    s.place = {0, 30, 60, 90};
    s.finish = 40;
    EXPECT_EQ(walked(p, s), 120);
    settle(p, s);
    EXPECT_EQ(walked(p, s), 60);
    EXPECT_EQ(s.finish, 40);
}

TEST(Pair, TwoPeopleKeepToTheirHalvesAndSeeEachOthersSide) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(2);
    made::addQuilt(a.session, a.quilts, {});
    const CrewPlan plan = planCrew(a.session, a.quilts);
    EXPECT_EQ(plan.finish, plan.bound) << "it costs nothing here";
    EXPECT_THAT(made::brokenRules(a.session, a.quilts, plan), testing::IsEmpty());
    const auto zone = [&](const Task& t) {
        for (const Zone& z : a.quilts[0].zones)
            if (z.id == t.zone)
                return z.area.middle();
        return Point{};
    };
    // At any moment both pin at the same distance along the table, on opposite halves.
    int together = 0;
    for (const Task& t : plan.tasks)
        for (const Task& o : plan.tasks)
            if (t.kind == TaskKind::placeOpen && o.kind == t.kind && o.pass == t.pass &&
                t.people < o.people && t.start == o.start) {
                ++together;
                EXPECT_TRUE(zone(t).x == zone(o).x || zone(t).y == zone(o).y) << t.id << o.id;
            }
    EXPECT_EQ(together, static_cast<int>(a.quilts[0].zones.size()) / 2);
}

} // namespace
