#include "plan/plan_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace bastewright {
namespace {

using testing::HasSubstr;
using Json = nlohmann::json;

Plan onePass() {
    Plan plan;
    QuiltPlan q;
    q.name = "Tide";
    q.layers = {{60_in, 72_in}, {64_in, 76_in}, {68_in, 80_in}};
    q.surface.length = 72_in;
    q.surface.width = 60_in;
    Pass p;
    p.zones = {"A1"};
    p.holds = {{Side::head, Hold::Kind::tape, 3, 18_in, {30_in}}};
    p.rolls = {{Side::left, 20_in, 72_in, 3_in, 3_in, 5, false}};
    q.passes = {p};
    q.zones = {{"A1", 1, {{}, {}, 60_in, 72_in}, {{{4.5_in, 5_in}, 45}}}};
    q.bounds = {150, 1};
    plan.quilts = {q};
    plan.tasks = {
        {"t1", TaskKind::placeOpen, 0, 1, "A1", {"Ada"}, {}, Seconds{0}, Seconds{90}, {}}};
    plan.finish = Seconds{90};
    plan.finishBound = Seconds{80};
    return plan;
}

TEST(PlanFile, HasTheFieldsOfTheContract) {
    const auto json = Json::parse(writePlan(onePass()));
    EXPECT_EQ(json["format"], "bastewright-plan");
    EXPECT_EQ(json["version"], 1);
    EXPECT_EQ(json["unit"], "in");
    EXPECT_EQ(json["layers"]["backing"], (Json{{"width", 68}, {"length", 80}}));
    EXPECT_EQ(json["surface"]["quilt_length_along"], "width");
    EXPECT_EQ(json["passes"][0]["shift"], (Json{{"dx", 0}, {"dy", 0}}));
    EXPECT_EQ(json["passes"][0]["holds"][0]["kind"], "tape");
    EXPECT_EQ(json["passes"][0]["rolls"][0]["clip_holds"], 3);
    EXPECT_EQ(json["zones"][0]["x1"], 60);
    EXPECT_EQ(json["zones"][0]["points"][0], (Json{{"x", 4.5}, {"y", 5}, {"angle", 45}}));
    EXPECT_EQ(json["tasks"][0]["kind"], "place-open");
    EXPECT_EQ(json["bounds"], (Json{{"points", 150}, {"passes", 1}, {"finish", 80}}));
    EXPECT_EQ(json["finish"], 90);
    EXPECT_FALSE(json.contains("quilts"));
}

TEST(PlanFile, SeveralQuiltsStandInAList) {
    Plan plan = onePass();
    plan.quilts.push_back(plan.quilts.front());
    const auto json = Json::parse(writePlan(plan));
    EXPECT_EQ(json["quilts"].size(), 2u);
    EXPECT_EQ(json["quilts"][1]["bounds"], (Json{{"points", 150}, {"passes", 1}}));
    EXPECT_EQ(json["bounds"], (Json{{"finish", 80}}));
    EXPECT_FALSE(json.contains("zones"));
    EXPECT_EQ(readPlan(writePlan(plan)).plan, plan);
}

TEST(PlanFile, ClothIsAlsoToldInYards) {
    Plan plan = onePass();
    plan.quilts[0].backing = BackingPlan{};
    plan.quilts[0].backing->buy = {{"slate", 240_in}};
    const auto json = Json::parse(writePlan(plan));
    EXPECT_DOUBLE_EQ(json["backing"]["buy"][0]["yards"].get<double>(), 6.6667);
}

TEST(PlanFile, EveryTaskKindHasAName) {
    for (int k = 0; k <= static_cast<int>(TaskKind::handOver); ++k) {
        const auto kind = static_cast<TaskKind>(k);
        EXPECT_FALSE(name(kind).empty()) << k;
        EXPECT_EQ(taskKind(name(kind)), kind) << name(kind);
    }
    EXPECT_FALSE(taskKind("dance"));
}

TEST(PlanFile, WhatACheckerNeedsMustBeThere) {
    const auto good = Json::parse(writePlan(onePass()));
    for (const char* field : {"/format",         "/version",           "/unit",
                              "/layers",         "/layers/top",        "/layers/top/width",
                              "/surface",        "/surface/length",    "/passes",
                              "/passes/0/field", "/passes/0/field/x0", "/passes/0/fresh",
                              "/passes/0/table", "/passes/0/shift",    "/passes/0/zones",
                              "/zones",          "/zones/0/id",        "/zones/0/pass",
                              "/zones/0/points", "/zones/0/y1",        "/zones/0/points/0/x",
                              "/tasks",          "/tasks/0/kind",      "/tasks/0/people",
                              "/tasks/0/start",  "/tasks/0/end",       "/finish"}) {
        const Json::json_pointer at{field};
        auto damaged = good;
        damaged[at.parent_pointer()].erase(at.back());
        const PlanRead read = readPlan(damaged.dump());
        EXPECT_FALSE(read.plan) << field;
        ASSERT_EQ(read.problems.size(), 1u) << field;
        EXPECT_EQ(read.problems[0].field, field);
        EXPECT_THAT(read.problems[0].text, HasSubstr("is missing"));
    }
}

TEST(PlanFile, TypesAreStrict) {
    const auto good = Json::parse(writePlan(onePass()));
    const std::vector<std::pair<const char*, Json>> rows{
        {"/format", "bastewright-job"},
        {"/version", 2},
        {"/unit", "ft"},
        {"/layers/top/width", -1},
        {"/layers/top/width", nullptr},
        {"/surface/quilt_length_along", "both"},
        {"/surface/closed", Json::array({"north"})},
        {"/passes", Json::object()},
        {"/passes/0", 3},
        {"/passes/0/number", 1.5},
        {"/passes/0/number", 1e10},
        {"/passes/0/field/x0", "a"},
        {"/passes/0/field/x1", -1},
        {"/passes/0/holds/0/kind", "glue"},
        {"/passes/0/holds/0/count", "3"},
        {"/passes/0/zones", Json::array({3})},
        {"/passes/0/lift_people", true},
        {"/zones/0/points/0/angle", 180},
        {"/zones/0/points/0/x", 1e300},
        {"/zones/0/id", std::string(121, 'a')},
        {"/tasks/0/kind", "dance"},
        {"/tasks/0/start", 0.5},
        {"/tasks/0/after", "t0"},
        {"/finish", "soon"},
        {"/findings", 1},
    };
    for (const auto& [field, value] : rows) {
        auto damaged = good;
        damaged[Json::json_pointer{field}] = value;
        const PlanRead read = readPlan(damaged.dump());
        EXPECT_FALSE(read.plan) << field << " = " << value;
        ASSERT_FALSE(read.problems.empty()) << field;
        EXPECT_THAT(read.problems[0].field, HasSubstr(field));
        EXPECT_EQ(read.problems[0].level, Finding::Level::stop);
    }
}

TEST(PlanFile, UnknownFieldsAreWarnedAbout) {
    auto json = Json::parse(writePlan(onePass()));
    json["zones"][0]["colour"] = "blue";
    const PlanRead read = readPlan(json.dump());
    ASSERT_TRUE(read.plan);
    ASSERT_EQ(read.problems.size(), 1u);
    EXPECT_EQ(read.problems[0].field, "/zones/0/colour");
    EXPECT_EQ(read.problems[0].level, Finding::Level::warn);
}

TEST(PlanFile, LengthsMayBeTextWithAUnit) {
    auto json = Json::parse(writePlan(onePass()));
    json["zones"][0]["points"][0]["x"] = "114.3 mm";
    EXPECT_EQ(readPlan(json.dump()).plan, onePass());
}

} // namespace
} // namespace bastewright
