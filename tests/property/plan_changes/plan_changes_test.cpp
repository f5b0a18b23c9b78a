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

/// What is said of a changed plan: rules that are broken, "file" where reading finds fault or
/// where it differs from the plan as it is written; nothing where the change goes unnoticed.
std::set<std::string> said(const PlannedSession& of, const Json& file) {
    const std::string text = file.dump();
    const PlanRead read = readPlan(text);
    if (!read.problems.empty())
        return {"file"};
    std::set<std::string> out;
    if (!unlikeWritten(text, *read.plan).empty())
        out.insert("file");
    if (*read.plan == of.plan)
        return out;
    for (const Finding& f : checkPlan(of.session, *read.plan))
        out.insert(f.field);
    return out;
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
            const auto rules = said(of, *bad);
            ++here.tried[c];
            here.rules.insert(rules.begin(), rules.end());
            if (!rules.empty())
                continue;
            ++here.unnoticed[c];
            const std::string what =
                of.name + " " + at.to_string() + " " + std::string{name(change)};
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

} // namespace
} // namespace bastewright::testing
