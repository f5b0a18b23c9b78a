#include "fixture.h"
#include "sheets/steps.h"
#include "sheets/task_words.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright::sheets {
namespace {

Task task(const char* id, TaskKind kind, const char* person, const char* zone, int start) {
    Task t;
    t.id = id;
    t.kind = kind;
    t.zone = zone;
    t.people = {person};
    t.start = Seconds{start};
    t.end = Seconds{start + 60};
    return t;
}

Plan planOf(std::vector<Task> tasks) {
    Plan plan;
    QuiltPlan quilt;
    for (const char* id : {"A1", "A2", "B1"})
        quilt.zones.push_back({id, 1, {}, {{}, {}, {}}});
    plan.quilts = {quilt};
    plan.tasks = std::move(tasks);
    return plan;
}

TEST(Steps, zonesOfOnePersonAreOneStep) {
    const auto steps = stepsOf(planOf({task("1", TaskKind::placeOpen, "Ada", "A1", 0),
                                       task("2", TaskKind::placeOpen, "Bo", "B1", 0),
                                       task("3", TaskKind::placeOpen, "Ada", "A2", 60)}),
                               0, 1);
    ASSERT_EQ(steps.size(), 2u);
    EXPECT_EQ(steps[0].zones, (std::vector<std::string>{"A1", "A2"}));
    EXPECT_EQ(steps[0].points, 6);
    EXPECT_EQ(steps[0].end, Seconds{120});
    EXPECT_EQ(steps[1].people, (std::vector<std::string>{"Bo"}));
}

TEST(Steps, aTaskOfTheWholePassDividesWaves) {
    Task smooth = task("2", TaskKind::smooth, "Bo", "", 60);
    const auto steps = stepsOf(planOf({task("1", TaskKind::placeOpen, "Ada", "A1", 0), smooth,
                                       task("3", TaskKind::placeOpen, "Ada", "A2", 120)}),
                               0, 1);
    ASSERT_EQ(steps.size(), 3u);
}

TEST(Steps, everyZoneTaskOfThePassIsInExactlyOne) {
    const Plan plan = fixture::planByHand(fixture::twoQuilts());
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        for (const auto& pass : plan.quilts[q].passes) {
            std::vector<std::string> planned, shown;
            for (const auto& t : plan.tasks)
                if (t.job == int(q) && t.pass == pass.number)
                    planned.push_back(std::string{name(t.kind)} + t.zone + t.people.front());
            for (const auto& s : stepsOf(plan, q, pass.number)) {
                if (s.zones.empty())
                    shown.push_back(std::string{name(s.kind)} + s.people.front());
                for (const auto& zone : s.zones)
                    shown.push_back(std::string{name(s.kind)} + zone + s.people.front());
            }
            std::ranges::sort(planned);
            std::ranges::sort(shown);
            EXPECT_EQ(shown, planned);
        }
}

TEST(Steps, lineNamesAllZonesAndTheirSum) {
    const Plan plan = planOf({task("1", TaskKind::closePins, "Ada", "A1", 0),
                              task("2", TaskKind::closePins, "Ada", "A2", 60)});
    const auto steps = stepsOf(plan, 0, 1);
    EXPECT_EQ(stepLine(steps[0], plan.quilts[0], 1, Basting::With::pins, Unit::inch),
              QStringLiteral("A1, A2: close 6\u00A0pins"));
}

} // namespace
} // namespace bastewright::sheets
