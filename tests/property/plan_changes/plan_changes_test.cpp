#include "checker/checker.h"
#include "plan/as_written.h"
#include "plan/plan_json.h"
#include "property/plan_changes/changes.h"
#include "property/plan_changes/plans.h"
#include "property/plan_changes/tally.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <iostream>

// Changes one field of a plan at a time and asks whether the checker, or whoever reads the file,
// says so. Every field of the schema is tried in every plan that has it, at a place chosen by the
// seed; BASTEWRIGHT_ALL tries ten places of each.
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

void tryChanges(const PlannedSession& of, const std::vector<SchemaField>& fields, Random& random,
                int places, Tally& tally) {
    const Json file = Json::parse(writePlan(of.plan));
    for (const SchemaField& field : fields) {
        const auto all = placesOf(field, file);
        for (int i = 0; i < places && !all.empty(); ++i)
            for (std::size_t c = 0; c < kChanges; ++c) {
                const auto at = all[std::size_t(random.whole(0, std::ssize(all) - 1))];
                const auto bad = changed(file, field, at, static_cast<Change>(c), random);
                if (!bad)
                    continue;
                FieldTally& here = tally[field.path];
                const auto rules = said(of, *bad);
                ++here.tried[c];
                here.rules.insert(rules.begin(), rules.end());
                if (!rules.empty())
                    continue;
                ++here.unnoticed[c];
                if (here.example.empty())
                    here.example = of.name + " " + at.to_string() + " " +
                                   std::string{name(static_cast<Change>(c))};
            }
    }
}

TEST(PlanChanges, AreNoticed) {
    const auto fields = planFields();
    Tally tally;
    Random random{20261130};
    const int places = std::getenv("BASTEWRIGHT_ALL") == nullptr ? 1 : 10;
    using Clock = std::chrono::steady_clock;
    for (const SessionToPlan& next : sessionsToPlan()) {
        const auto begin = Clock::now();
        const PlannedSession of = next.make();
        const auto middle = Clock::now();
        const Findings wrong = checkPlan(of.session, of.plan);
        EXPECT_EQ(sentences(wrong), "") << of.name;
        EXPECT_EQ(sentences(unlikeWritten(writePlan(of.plan), of.plan)), "") << of.name;
        tryChanges(of, fields, random, places, tally);
        const std::chrono::duration<double> planning = middle - begin,
                                            trying = Clock::now() - middle;
        std::cout << of.name << ": " << planning.count() << " s planned, " << trying.count()
                  << " s tried" << std::endl;
    }
    std::cout << table(tally, std::getenv("BASTEWRIGHT_TABLE") != nullptr);
    for (const SchemaField& field : fields)
        if (!tally.contains(field.path))
            std::cout << "never tried: " << field.path << "\n";
}

} // namespace
} // namespace bastewright::testing
