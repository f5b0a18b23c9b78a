#include "plan/plan_json.h"
#include "unit/plan/random_plan.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace bastewright {
namespace {

std::string told(const Findings& findings) {
    std::string out;
    for (const auto& f : findings)
        out.append(f.field).append(": ").append(f.text.english()).append("\n");
    return out;
}

TEST(PlanRoundTrip, WhatIsWrittenReadsBackEqualToTheNanometre) {
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        const Plan plan = randomPlan(seed);
        const std::string text = writePlan(plan);
        const PlanRead read = readPlan(text);
        ASSERT_TRUE(read.plan) << "seed " << seed << "\n" << told(read.problems) << text;
        ASSERT_TRUE(read.problems.empty()) << "seed " << seed << "\n" << told(read.problems);
        ASSERT_TRUE(*read.plan == plan) << "seed " << seed << "\n" << text;
        ASSERT_EQ(writePlan(*read.plan), text) << "seed " << seed;
    }
}

TEST(PlanRoundTrip, SentencesKeepTheirFormUntilSomebodyChangesTheText) {
    Plan plan;
    plan.quilts.resize(1);
    plan.findings.push_back({Finding::Kind::other, Finding::Level::note, "",
                             core::says("Zone %1 wants %2.", "C4", core::length(4_in, Unit::inch)),
                             ""});
    std::string text = writePlan(plan);
    const Sentence same = readPlan(text).plan->findings.front().text;
    EXPECT_EQ(same.text(), "Zone %1 wants %2.");
    EXPECT_EQ(same.values()[1].kind(), Sentence::Kind::figure);

    const std::string was = "\"Zone C4 wants 4 in.\"";
    text.replace(text.find(was), was.size(), "\"My own words.\"");
    const Sentence other = readPlan(text).plan->findings.front().text;
    EXPECT_EQ(other.kind(), Sentence::Kind::name);
    EXPECT_EQ(other.english(), "My own words.");
}

TEST(PlanRoundTrip, LengthsAreNumbersThatAnyReaderCanTakeInTheUnit) {
    constexpr double kNanometresPerInch = 25'400'000; // NIST Handbook 44, Appendix C
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        Plan plan = randomPlan(seed);
        plan.unit = Unit::inch;
        plan.quilts.resize(1);
        const auto json = nlohmann::json::parse(writePlan(plan));
        for (std::size_t i = 0; i < plan.quilts[0].zones.size(); ++i)
            for (std::size_t k = 0; k < plan.quilts[0].zones[i].points.size(); ++k) {
                const auto& at = plan.quilts[0].zones[i].points[k].at;
                const auto& point = json["zones"][i]["points"][k];
                ASSERT_TRUE(point["x"].is_number());
                EXPECT_EQ(std::llround(point["x"].get<double>() * kNanometresPerInch), at.x.nm());
                EXPECT_EQ(std::llround(point["y"].get<double>() * kNanometresPerInch), at.y.nm());
            }
    }
}

} // namespace
} // namespace bastewright
