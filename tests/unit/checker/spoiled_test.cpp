#include "checker/rule.h"
#include "plan/plan_json.h"
#include "plan/sentences.h"
#include "unit/checker/spoiled.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace bastewright::testing {
namespace {

std::vector<Spoiled> all() {
    std::vector<Spoiled> out;
    for (const auto& part : {spoiledLayers(), spoiledSurfaces(), spoiledPasses(), spoiledZones(),
                             spoiledPoints(), spoiledHolds(), spoiledCloth(), spoiledPeople(),
                             spoiledTasks(), spoiledSupplies(), spoiledFigures()})
        out.insert(out.end(), part.begin(), part.end());
    return out;
}

class SpoiledPlan : public ::testing::TestWithParam<Spoiled> {};

/// Rules that hold a figure to all that it follows from: what is spoiled elsewhere may show there
/// too, where the row neither asks for them nor has them stay silent.
const std::set<std::string> kFollowing{
    "plan.findings",  "plan.help",     "passes.listed",  "points.told",
    "points.gaps",    "rolls.machine", "backing.listed", "backing.order",
    "batting.listed", "crew.letters",  "crew.waits",     "crew.lengths",
    "crew.setup",     "crew.range",    "crew.pauses",    "supplies.needed"};

std::set<std::string> brokenBut(const Good& good, const Spoiled& row) {
    std::set<std::string> out = broken(good);
    std::erase_if(out, [&](const std::string& rule) {
        return kFollowing.contains(rule) && !row.noticed.by.contains(rule) &&
               !row.keeps.contains(rule);
    });
    return out;
}

TEST_P(SpoiledPlan, BreaksTheRulesItShouldAndNoOthers) {
    Good good = GetParam().good();
    ASSERT_EQ(broken(good), std::set<std::string>{}) << "before it was spoiled";
    GetParam().spoil(good);
    const Findings findings = checkPlan(good.session, good.plan);
    EXPECT_EQ(brokenBut(good, GetParam()), GetParam().noticed.by);
    for (const Finding& f : findings) {
        EXPECT_EQ(f.level, Finding::Level::stop);
        EXPECT_TRUE(f.text.english().ends_with('.')) << f.text;
    }
}

// One of the rules names the place, and whatever else is named is a place of the file, or of what
// is missing in it.
TEST_P(SpoiledPlan, IsNamedWhereItIs) {
    Good good = GetParam().good();
    GetParam().spoil(good);
    const auto file = nlohmann::json::parse(writePlan(good.plan));
    std::set<std::string> places;
    for (const Finding& f : checkPlan(good.session, good.plan)) {
        if (GetParam().noticed.by.contains(f.subject))
            places.insert(f.field);
        const nlohmann::json::json_pointer place{f.field};
        EXPECT_TRUE(file.contains(place) || file.contains(place.parent_pointer()))
            << f.field << ": " << f.text;
    }
    if (!GetParam().noticed.by.empty()) {
        EXPECT_THAT(places, ::testing::Contains(GetParam().noticed.at));
    }
}

// What people read is not what a plan is judged by.
TEST_P(SpoiledPlan, IsJudgedTheSameWithoutItsSentences) {
    Good good = GetParam().good();
    GetParam().spoil(good);
    forEachSentence(good.plan, [](Sentence& s) {
        if (!s.empty())
            s = "x";
    });
    for (Finding& f : good.plan.findings)
        f.field = "x";
    EXPECT_EQ(brokenBut(good, GetParam()), GetParam().noticed.by);
}

INSTANTIATE_TEST_SUITE_P(Checker, SpoiledPlan, ::testing::ValuesIn(all()),
                         [](const auto& row) { return row.param.how; });

TEST(SpoiledPlans, TogetherBreakEveryRule) {
    std::set<std::string> seen;
    for (const Spoiled& row : all())
        seen.insert(row.noticed.by.begin(), row.noticed.by.end());
    for (const check::Rule& rule : check::rules())
        EXPECT_TRUE(seen.contains(std::string{rule.name})) << rule.name << " is never broken";
}

} // namespace
} // namespace bastewright::testing
