#include "checker/checker.h"
#include "job/job_json.h"
#include "plan/plan_json.h"
#include "planners/whole/whole.h"
#include "property/checked_plans/random_session.h"

#include <gmock/gmock.h>

#include <cstdlib>
#include <fstream>
#include <future>
#include <iostream>
#include <map>

// Plans many random sessions and lets the checker judge the plans. The number of sessions and the
// first seed are set by BASTEWRIGHT_JOBS and BASTEWRIGHT_SEED; where BASTEWRIGHT_KEEP names a
// folder, every session that fails is written there with its plan.
namespace bastewright::testing {
namespace {

std::uint64_t number(const char* variable, std::uint64_t otherwise) {
    const char* text = std::getenv(variable);
    return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

std::string sentences(const Findings& findings) {
    std::string out;
    for (const Finding& f : findings)
        out += std::string{"  "} + name(f.level) + " " + f.field + ": " + f.text + "\n";
    return out;
}

/// What is wrong with a plan: nothing where the checker agrees, or where the plan says itself why
/// there is no good one and what would cure it.
std::string wrong(const Session& session, const Plan& plan) {
    std::string out;
    if (!anyStop(plan.findings))
        out = sentences(checkPlan(session, plan));
    for (const Finding& f : plan.findings)
        if (f.level == Finding::Level::stop && f.cure.empty())
            out += "  a stop without a cure: " + f.field + ": " + f.text + "\n";
    return out;
}

void keep(std::uint64_t seed, const Session& session, const std::string& plan) {
    const char* folder = std::getenv("BASTEWRIGHT_KEEP");
    if (folder == nullptr)
        return;
    const std::string base = std::string{folder} + "/" + std::to_string(seed);
    std::ofstream{base + ".job.json"} << writeSession(session);
    std::ofstream{base + ".plan.json"} << plan;
}

TEST(CheckedPlans, AreGoodOrSayWhyNotAndAreTheSameTwice) {
    const std::uint64_t first = number("BASTEWRIGHT_SEED", 1);
    const std::uint64_t jobs = number("BASTEWRIGHT_JOBS", 500);
    std::cout << "seeds " << first << " to " << first + jobs - 1 << std::endl;
    std::map<std::string, int> stops; // by field: how many plans each kind of stop ends
    int good = 0;
    for (std::uint64_t seed = first; seed < first + jobs; ++seed) {
        SCOPED_TRACE("BASTEWRIGHT_SEED=" + std::to_string(seed) + " BASTEWRIGHT_JOBS=1");
        const Session session = randomSession(seed);
        const SessionRead read = readSession(writeSession(session));
        ASSERT_TRUE(read.session.has_value()) << sentences(read.problems);
        ASSERT_EQ(*read.session, session);

        auto elsewhere = std::async(std::launch::async, [&] { return planWhole(session); });
        const Plan plan = planWhole(session);
        const std::string text = writePlan(plan);
        EXPECT_TRUE(text == writePlan(elsewhere.get())) << "planned twice, the plans differ";

        const std::string complaints = wrong(session, plan);
        EXPECT_EQ(complaints, "");
        if (!complaints.empty())
            keep(seed, session, text);
        good += anyStop(plan.findings) ? 0 : 1;
        for (const Finding& f : plan.findings)
            if (f.level == Finding::Level::stop)
                ++stops[f.field];
    }
    std::cout << good << " of " << jobs << " sessions can be done; the others stop at:\n";
    for (const auto& [field, times] : stops)
        std::cout << "  " << times << " × " << field << "\n";
    // Most sessions must be possible, or the test would prove little.
    if (jobs >= 50) {
        EXPECT_GT(double(good), 0.3 * double(jobs));
    }
}

} // namespace
} // namespace bastewright::testing
