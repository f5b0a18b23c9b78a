#include "checker/checker.h"
#include "plan/as_written.h"
#include "plan/plan_json.h"
#include "property/plan_changes/changes.h"
#include "property/plan_changes/loose.h"
#include "property/plan_changes/plans.h"
#include "property/plan_changes/tally.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <fstream>
#include <iostream>

// Changes one field of a plan at a time and asks whether the checker, or whoever reads the file,
// says so; what may go unnoticed is listed in loose.cpp.
namespace bastewright::testing {
namespace {

std::string sentences(const Findings& findings) {
    std::string out;
    for (const Finding& f : findings)
        out += "  " + f.field + ": " + f.text.english() + "\n";
    return out;
}

/// What is said of a changed plan.
struct Said {
    /// That are broken; "file" where reading finds fault or where it differs from the plan as it is
    /// written; none where the change goes unnoticed.
    std::set<std::string> rules;
    std::set<std::string> places; ///< that are named

    void take(const Findings& findings, bool ofChecker) {
        for (const Finding& f : findings) {
            rules.insert(ofChecker ? f.subject : "file");
            places.insert(f.field);
        }
    }
};

Said said(const PlannedSession& of, const Json& file) {
    const std::string text = file.dump();
    const PlanRead read = readPlan(text);
    Said out;
    out.take(read.problems, false);
    if (!out.rules.empty())
        return out;
    out.take(unlikeWritten(text, *read.plan), false);
    if (*read.plan != of.plan)
        out.take(checkPlan(of.session, *read.plan), true);
    return out;
}

/// Somebody names a place near to what was changed.
void takeNearness(const SchemaField& field, const std::string& at, const std::string& what,
                  const std::set<std::string>& places, FieldTally& here) {
    Near nearest = Near::elsewhere;
    for (const std::string& place : places)
        nearest = std::min(nearest, nearness(at, place));
    ++here.near[static_cast<std::size_t>(nearest)];
    if (nearest >= here.farthest) {
        here.farthest = nearest;
        here.afar = what + " at " + *places.begin();
    }
    EXPECT_TRUE(mayBeNamed(field.path, nearest))
        << what << " is named at " << ::testing::PrintToString(places);
}

/// Tries changes at one place of each field, every so many-th of them.
void tryChanges(const PlannedSession& of, const std::vector<SchemaField>& fields, Random& random,
                int every, Tally& tally) {
    const Json file = Json::parse(writePlan(of.plan));
    for (const SchemaField& field : fields) {
        const auto all = placesOf(field, file);
        for (std::size_t c = 0; c < kChanges && !all.empty(); ++c) {
            if (random.whole(1, every) > 1)
                continue;
            const auto change = static_cast<Change>(c);
            const auto at = all[std::size_t(random.whole(0, std::ssize(all) - 1))];
            const auto bad = changed(file, field, at, change, random);
            if (!bad)
                continue;
            FieldTally& here = tally[field.path];
            const auto [rules, places] = said(of, *bad);
            ++here.tried[c];
            here.rules.insert(rules.begin(), rules.end());
            const std::string what =
                of.name + " " + at.to_string() + " " + std::string{name(change)};
            if (!rules.empty()) {
                takeNearness(field, at.to_string(), what, places, here);
                continue;
            }
            ++here.unnoticed[c];
            if (here.example.empty())
                here.example = what;
            EXPECT_TRUE(mayPass(field.path, change, anyStop(of.plan.findings)))
                << "unnoticed: " << what;
        }
    }
}

/// Every row of the page of fields, of which each begins with the field's path.
std::set<std::string> fieldsOfThePage() {
    std::ifstream page{BASTEWRIGHT_SOURCE "/docs/computation/checked_fields.md"};
    std::set<std::string> out;
    for (std::string line; std::getline(page, line);)
        if (line.starts_with("| /"))
            out.insert(line.substr(2, line.find(' ', 2) - 2));
    return out;
}

// BASTEWRIGHT_ALL tries every change in every session, and writes the page where BASTEWRIGHT_WRITE
// names it; the gate a part, by BASTEWRIGHT_SEED.
TEST(PlanChanges, AreNoticed) {
    const auto fields = planFields();
    const char* seed = std::getenv("BASTEWRIGHT_SEED");
    Random random{seed == nullptr ? 20261130 : std::strtoull(seed, nullptr, 10)};
    const bool all = std::getenv("BASTEWRIGHT_ALL") != nullptr;
    Tally tally;
    int sessions = 0;
    const auto begin = std::chrono::steady_clock::now();
    for (const SessionToPlan& next : sessionsToPlan()) {
        if (!all && !next.quick && random.whole(1, 4) > 1)
            continue;
        const PlannedSession of = next.make();
        ++sessions;
        EXPECT_EQ(sentences(checkPlan(of.session, of.plan)), "") << of.name;
        EXPECT_EQ(sentences(unlikeWritten(writePlan(of.plan), of.plan)), "") << of.name;
        tryChanges(of, fields, random, all ? 1 : 5, tally);
    }
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    std::cout << sessions << " sessions, " << took.count() << " s\n" << table(tally, all);
    if (!all)
        return;
    for (const SchemaField& field : fields)
        EXPECT_TRUE(tally.contains(field.path)) << field.path << " is in no plan that is tried";
    if (const char* page = std::getenv("BASTEWRIGHT_WRITE"))
        std::ofstream{page} << fieldsPage(fields, tally, sessions);
}

TEST(PlanChanges, EveryFieldOfTheSchemaIsOnThePage) {
    const auto listed = fieldsOfThePage();
    std::set<std::string> named;
    for (const SchemaField& field : planFields())
        named.insert(field.path);
    EXPECT_EQ(listed, named) << "BASTEWRIGHT_ALL=1 BASTEWRIGHT_WRITE=docs/computation/"
                                "checked_fields.md test_plan_changes writes the page";
}

TEST(PlanChanges, HardlyAnyFieldIsFree) {
    const auto fields = planFields();
    int free = 0;
    for (const Loose& l : looseFields()) {
        EXPECT_TRUE(
            std::ranges::any_of(fields, [&](const SchemaField& f) { return f.path == l.path; }))
            << l.path << " is not in the schema";
        free += l.how == Loose::How::free ? 1 : 0;
    }
    EXPECT_LE(free * 50, std::ssize(fields));
}

TEST(PlanChanges, AreNamedNearButForFieldsOfTheSchema) {
    const auto fields = planFields();
    for (const Afar& a : namedAfar()) {
        EXPECT_TRUE(
            std::ranges::any_of(fields, [&](const SchemaField& f) { return f.path == a.path; }))
            << a.path << " is not in the schema";
        EXPECT_GT(a.near, Near::element) << a.path;
    }
    EXPECT_EQ(nearness("/tasks/3/start", "/tasks/3/start"), Near::onPath);
    EXPECT_EQ(nearness("/tasks/3/start", "/tasks"), Near::onPath);
    EXPECT_EQ(nearness("/tasks", "/tasks/4/id"), Near::onPath);
    EXPECT_EQ(nearness("/tasks/3/start", "/tasks/3/people/0"), Near::element);
    EXPECT_EQ(nearness("/quilts/1/rows/gap", "/quilts/1/rows/lines/0"), Near::element);
    EXPECT_EQ(nearness("/tasks/3/start", "/tasks/31/start"), Near::list);
    EXPECT_EQ(nearness("/passes/0/table/x0", "/layers/top"), Near::quilt);
    EXPECT_EQ(nearness("/quilts/1/zones/0/id", "/quilts/1/passes"), Near::quilt);
    EXPECT_EQ(nearness("/quilts/1/zones/0/id", "/quilts"), Near::quilt);
    EXPECT_EQ(nearness("/quilts/1/zones/0/id", "/quilts/0/zones/0/id"), Near::elsewhere);
    EXPECT_EQ(nearness("/passes/0/number", "/tasks/0/pass"), Near::elsewhere);
    EXPECT_EQ(nearness("/passes/0/number", ""), Near::elsewhere);
}

} // namespace
} // namespace bastewright::testing
