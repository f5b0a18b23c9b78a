#include "checker/report.h"
#include "checker/rest/rest_view.h"
#include "checker/rule.h"
#include "unit/checker/good_plan.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

// Where findings of the checker say that something is, and how they say what a rule asks.
namespace bastewright::testing {
namespace {

using namespace check;

TEST(Places, OfOneQuiltStandAtTheTopOfTheFile) {
    const Good one = goodPlan(), two = goodPair();
    const PlanView single{one.session, one.plan}, pair{two.session, two.plan};
    const QuiltView &alone = single.quilts.front(), &second = pair.quilts.back();
    EXPECT_EQ((where(alone) / "layers/top").text(), "/layers/top");
    EXPECT_EQ((where(second) / "layers/top").text(), "/quilts/1/layers/top");
    EXPECT_EQ(whereOfAll(single, "surface/tables").text(), "/surface/tables");
    EXPECT_EQ(whereOfAll(pair, "surface/tables").text(), "/quilts");
    const Zone& zone = second.quilt.zones[2];
    EXPECT_EQ(where(second, zone, zone.points[1]).text(), "/quilts/1/zones/2/points/1");
    EXPECT_EQ(where(second, second.quilt.passes[1]).text(), "/quilts/1/passes/1");
    EXPECT_EQ(where(pair, two.plan.tasks[7]).text(), "/tasks/7");
}

TEST(Places, OfWhatIsNotThereAreTheListItWouldBeIn) {
    const Good good = goodPlan(), other = goodPlan();
    const PlanView view{good.session, good.plan};
    const QuiltView& v = view.quilts.front();
    EXPECT_EQ(where(v, other.plan.quilts.front().zones[1]).text(), "/zones");
    EXPECT_EQ(where(view, other.plan.tasks[1]).text(), "/tasks");
}

// The checker looks at what is left of a plan; its file has all of it.
TEST(Places, InAPartOfAPlanAreThoseOfTheWhole) {
    const Good good = goodPlan();
    Plan part = good.plan;
    part.tasks.erase(part.tasks.begin(), part.tasks.begin() + 5);
    part.quilts.front().passes.erase(part.quilts.front().passes.begin());
    auto& stretches = part.quilts.front().passes.front().stretches;
    ASSERT_GE(stretches.size(), 2U);
    stretches.erase(stretches.begin());
    const PlanView view{good.session, part, good.plan};
    const QuiltView& v = view.quilts.front();
    const Pass& pass = v.quilt.passes.front();
    EXPECT_EQ(where(view, part.tasks[2]).text(), "/tasks/7");
    EXPECT_EQ(where(v, part.tasks[2]).text(), "/tasks/7");
    EXPECT_EQ(where(v, pass).text(), "/passes/1");
    EXPECT_EQ(where(v, pass, pass.stretches.front()).text(), "/passes/1/stretches/1");
    EXPECT_EQ(where(v, v.quilt.zones[3]).text(), "/zones/3");
}

TEST(Places, OfWhatIsOnlyCountedAreWhereAllOfItStands) {
    Findings out;
    Report report{"points.angle", out, 1};
    const Pointer zones = Pointer{} / "zones";
    report.add(zones / 1, "First.");
    report.add(zones / 12 / "points/3", "Second.");
    report.add(zones / 12 / "points/30", "Third.");
    report.close();
    ASSERT_EQ(out.size(), 2U);
    EXPECT_EQ(out[0].field, "/zones/1");
    EXPECT_EQ(out[1].field, "/zones/12/points");
    EXPECT_EQ(out[0].subject, "points.angle");
    EXPECT_EQ(common(zones / 1, zones / 12).text(), "/zones");
    EXPECT_EQ(common(zones / 1, zones / 1).text(), "/zones/1");
    EXPECT_EQ(common(zones / 1 / "x0", zones / 1).text(), "/zones/1");
    EXPECT_EQ(common(zones, Pointer{} / "tasks").text(), "");
}

TEST(Rules, AreSaidInPlainWordsEachInItsOwn) {
    std::set<std::string_view> seen;
    const auto look = [&](std::string_view name) {
        const std::string_view words = ruleInWords(name);
        EXPECT_GE(words.size(), 15U) << name;
        EXPECT_FALSE(words.ends_with('.')) << name;
        EXPECT_TRUE(seen.insert(words).second) << name << ": " << words;
    };
    for (const Rule& rule : rules())
        look(rule.name);
    for (const RuleOfRest& rule : rulesOfRest())
        look(rule.name);
    EXPECT_EQ(ruleInWords("points.nonsense"), "");
}

} // namespace
} // namespace bastewright::testing
