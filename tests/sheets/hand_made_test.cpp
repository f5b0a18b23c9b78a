#include "promises.h"

#include <gtest/gtest-spi.h>

#include <algorithm>
#include <functional>
#include <ostream>

namespace bastewright {
namespace {

struct Case {
    const char* name;
    Session (*session)();
    Paper paper;
};

void PrintTo(const Case& c, std::ostream* out) {
    *out << c.name;
}

/// How many failures a check reports.
int failuresOf(const std::function<void()>& check) {
    testing::TestPartResultArray results;
    const testing::ScopedFakeTestPartResultReporter reporter{
        testing::ScopedFakeTestPartResultReporter::INTERCEPT_ALL_THREADS, &results};
    check();
    return results.size();
}

// Sheets that differ from the plan must be noticed, or the checks below would prove nothing.
TEST(Promises, noticeWhatIsWrong) {
    SKIP_WITHOUT_POPPLER();
    Written w{fixture::harbourLights()};
    EXPECT_EQ(failuresOf([&] {
                  expectEverybodysTasks(w);
                  expectLeadKnowsAll(w);
              }),
              0);
    const Plan right = w.plan;
    w.plan.quilts[0].zones[3].points.pop_back();
    EXPECT_GT(failuresOf([&] { expectEverybodysTasks(w); }), 0) << "a pin too many";
    w.plan = right;
    w.plan.tasks[6].start += Seconds{60};
    EXPECT_GT(failuresOf([&] { expectEverybodysTasks(w); }), 0) << "a minute early";
    w.plan = right;
    std::swap(w.plan.tasks[5].people, w.plan.tasks[6].people);
    EXPECT_GT(failuresOf([&] { expectEverybodysTasks(w); }), 0) << "another person's sheet";
    w.plan = right;
    w.plan.supplies.push_back({"thimbles", 1, 0, 1, ""});
    EXPECT_GT(failuresOf([&] { expectLeadKnowsAll(w); }), 0) << "something left off the list";
    EXPECT_GT(failuresOf([&] { expectGoodForm(w, Paper::letter); }), 0) << "the other paper";
}

// Two quilts on two tables, zones that two share, a zone that somebody else has taken over: each
// stands on the right sheet, with its share and under its own quilt, pass and table.
TEST(SharedAndHanded, standOnTheSheetsOfWhoeverDoesThem) {
    SKIP_WITHOUT_POPPLER();
    const Session session = fixture::twoQuilts();
    Plan plan = fixture::planByHand(session);
    plan.quilts[1].surface.number = 2;
    std::vector<Task> tasks;
    int shared = 0;
    for (std::size_t i = 0; i < plan.tasks.size(); ++i) {
        Task t = plan.tasks[i];
        const auto zone = std::ranges::find(plan.quilts[std::size_t(t.job)].zones, t.zone, &Zone::id);
        const bool ofZone = zone != plan.quilts[std::size_t(t.job)].zones.end();
        if (ofZone && i % 7 == 0)
            t.people = {"Dot"}; // handed over
        if (ofZone && i % 3 == 0 && zone->points.size() > 3) {
            Task other = t;
            const int left = int(zone->points.size()) / 3;
            t.share = Share{Side::left, left};
            other.share = Share{Side::right, int(zone->points.size()) - left};
            other.id += "b";
            other.people = {t.people.front() == "Bo" ? "Cai" : "Bo"};
            tasks.push_back(t);
            tasks.push_back(other);
            ++shared;
        } else {
            tasks.push_back(t);
        }
    }
    ASSERT_GT(shared, 5);
    plan.tasks = tasks;
    for (const Paper paper : {Paper::a4, Paper::letter})
        expectEverybodysTasks(Written{session, plan, {.paper = paper}});
    Written w{session, plan};
    std::ranges::find_if(w.plan.tasks, [](const Task& t) { return t.share.has_value(); })
        ->share->points += 1;
    EXPECT_GT(failuresOf([&] { expectEverybodysTasks(w); }), 0) << "a share of another size";
}

class HandMade : public testing::TestWithParam<Case> {
protected:
    void SetUp() override { SKIP_WITHOUT_POPPLER(); }
    Written written() const { return Written{GetParam().session(), {.paper = GetParam().paper}}; }
};

TEST_P(HandMade, everybodyHasTheirOwnTasksAndNobodyElses) {
    expectEverybodysTasks(written());
}
TEST_P(HandMade, theLeadHasEverything) {
    expectLeadKnowsAll(written());
}
TEST_P(HandMade, pagesAreWellFormed) {
    expectGoodForm(written(), GetParam().paper);
}

INSTANTIATE_TEST_SUITE_P(
    Sessions, HandMade,
    testing::Values(Case{"harbour_lights_a4", fixture::harbourLights, Paper::a4},
                    Case{"harbour_lights_letter", fixture::harbourLights, Paper::letter},
                    Case{"many_people_a4", fixture::manyPeople, Paper::a4},
                    Case{"many_people_letter", fixture::manyPeople, Paper::letter},
                    Case{"two_quilts_a4", fixture::twoQuilts, Paper::a4},
                    Case{"two_quilts_letter", fixture::twoQuilts, Paper::letter}),
    [](const auto& one) { return std::string{one.param.name}; });

} // namespace
} // namespace bastewright
