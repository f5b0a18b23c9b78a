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
                  expectEverybodysPasses(w);
                  expectLeadKnowsAll(w);
              }),
              0);
    const Plan right = w.plan;
    w.plan.quilts[0].zones[3].points.pop_back();
    EXPECT_GT(failuresOf([&] { expectEverybodysPasses(w); }), 0) << "a pin too many";
    w.plan = right;
    for (Task& t : w.plan.tasks)
        t.start += Seconds{60};
    EXPECT_GT(failuresOf([&] { expectEverybodysPasses(w); }), 0) << "a minute early";
    w.plan = right;
    const auto zone = std::ranges::find(w.plan.tasks, TaskKind::placeOpen, &Task::kind);
    zone->people = {zone->people.front() == "Dot" ? "Bo" : "Dot"};
    EXPECT_GT(failuresOf([&] { expectEverybodysPasses(w); }), 0) << "another person's sheet";
    EXPECT_GT(failuresOf([&] { expectLeadKnowsAll(w); }), 0) << "another person's pins";
    w.plan = right;
    // The last row of one zone and the first of the next.
    std::swap(w.plan.quilts[0].rows->lines[4], w.plan.quilts[0].rows->lines[5]);
    EXPECT_GT(failuresOf([&] { expectEverybodysPasses(w); }), 0) << "another row";
    w.plan = right;
    w.plan.breaks = {{Seconds{1800}, Seconds{2400}}};
    EXPECT_GT(failuresOf([&] { expectEverybodysPasses(w); }), 0) << "a break left off";
    w.plan = right;
    w.plan.supplies.push_back({Supply::Kind::other, "thimbles", 1, 0, 1, ""});
    EXPECT_GT(failuresOf([&] { expectLeadKnowsAll(w); }), 0) << "something left off the list";
    w.plan = right;
    w.plan.supplies.front().buy += 1;
    EXPECT_GT(failuresOf([&] { expectLeadKnowsAll(w); }), 0) << "one too few to get";
    EXPECT_GT(failuresOf([&] { expectGoodForm(w, Paper::letter); }), 0) << "the other paper";
}

// Two quilts on two tables, zones that somebody else has taken over: each stands on the sheet of
// whoever does it, under its own quilt, pass and table.
TEST(HandedOver, standsOnTheSheetOfWhoeverDoesIt) {
    SKIP_WITHOUT_POPPLER();
    const Session session = fixture::twoQuilts();
    Plan plan = fixture::planByHand(session);
    plan.quilts[1].surface.number = 2;
    int handed = 0;
    for (std::size_t i = 0; i < plan.tasks.size(); i += 3)
        if (Task& t = plan.tasks[i]; !t.zone.empty()) {
            t.people = {t.people.front() == "Dot" ? "Bo" : "Dot"};
            ++handed;
        }
    ASSERT_GT(handed, 5);
    for (const Paper paper : {Paper::a4, Paper::letter})
        expectEverybodysPasses(Written{session, plan, {.paper = paper}});
}

class HandMade : public testing::TestWithParam<Case> {
protected:
    void SetUp() override { SKIP_WITHOUT_POPPLER(); }
    Written written() const { return Written{GetParam().session(), {.paper = GetParam().paper}}; }
};

TEST_P(HandMade, everybodyHasTheirOwnPassesAndNobodyElses) {
    expectEverybodysPasses(written());
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
