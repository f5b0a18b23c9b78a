#include "plan/plan_json.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

/// A plan file without kinds, as earlier versions wrote them.
Plan older(const std::string& shared) {
    const PlanRead read =
        readPlan(R"({"format": "bastewright-plan", "version": 1, "unit": "in", "quilts": [],
                     "tasks": [], "finish": 0, )" +
                 shared + "}");
    return read.plan ? *read.plan : Plan{};
}

TEST(OlderPlans, FindingsAreKnownByTheirFields) {
    const Plan plan = older(R"("findings": [
        {"level": "stop", "field": "/helpers", "text": "Too short."},
        {"level": "stop", "field": "/jobs/2/backing/width", "text": "Too small."},
        {"level": "warn", "field": "/batting/length", "text": "Scant."},
        {"level": "note", "field": "/jobs/1", "text": "Something."},
        {"level": "note", "field": "/jobs/99999999999999999999/top", "text": "No such quilt."},
        {"level": "note", "text": "Anything."}])");
    ASSERT_EQ(plan.findings.size(), 6u);
    EXPECT_TRUE(isAboutPeople(plan.findings[0]));
    EXPECT_EQ(plan.findings[1].kind, Finding::Kind::layerShort);
    EXPECT_EQ(plan.findings[1].subject, "backing");
    EXPECT_EQ(plan.findings[1].quilt, 2);
    EXPECT_EQ(plan.findings[2].subject, "batting");
    EXPECT_EQ(plan.findings[2].quilt, -1);
    EXPECT_EQ(plan.findings[3].kind, Finding::Kind::other);
    EXPECT_EQ(plan.findings[3].quilt, 1);
    EXPECT_EQ(plan.findings[4].quilt, -1);
    EXPECT_EQ(plan.findings[5].kind, Finding::Kind::other);
}

TEST(OlderPlans, SuppliesAreKnownByTheirNames) {
    const Plan plan = older(R"("supplies": [
        {"item": "pins", "need": 1}, {"item": "clips that hold 3 in", "need": 2},
        {"item": "batting off the roll, 96 in wide", "need": 3}, {"item": "thimbles", "need": 4}])");
    ASSERT_EQ(plan.supplies.size(), 4u);
    EXPECT_EQ(plan.supplies[0].kind, Supply::Kind::pins);
    EXPECT_EQ(plan.supplies[1].kind, Supply::Kind::clips);
    EXPECT_EQ(plan.supplies[2].kind, Supply::Kind::battingRoll);
    EXPECT_EQ(plan.supplies[3].kind, Supply::Kind::other);
}

TEST(OlderPlans, AKindThatIsWrittenIsTaken) {
    const Plan plan = older(R"("findings": [
        {"level": "stop", "kind": "no-surface", "quilt": 0, "field": "/helpers", "text": "x"}])");
    ASSERT_EQ(plan.findings.size(), 1u);
    EXPECT_EQ(plan.findings[0].kind, Finding::Kind::noSurface);
    EXPECT_EQ(plan.findings[0].quilt, 0);
}

} // namespace
} // namespace bastewright
