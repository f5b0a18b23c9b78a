#include "checker/checker.h"
#include "job/job_json.h"
#include "plan/plan_json.h"
#include "plan/sentences.h"
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
// folder, every session that fails is written there with its plan. Long runs halve their time by
// BASTEWRIGHT_ONCE, by which each session is planned once only, or take the first complete plans,
// without any search: BASTEWRIGHT_EFFORT=0.
namespace bastewright::testing {
namespace {

constexpr std::uint64_t kParts = 3;

std::uint64_t number(const char* variable, std::uint64_t otherwise) {
    const char* text = std::getenv(variable);
    return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

WholeOptions options() {
    return {.effort = static_cast<int>(number("BASTEWRIGHT_EFFORT", 1))};
}

std::string sentences(const Findings& findings) {
    std::string out;
    for (const Finding& f : findings)
        out += std::string{"  "} + name(f.level) + " " + f.field + ": " + f.text.english() + "\n";
    return out;
}

/// What is wrong with a plan. One that says itself why there is no good one must say what would
/// cure it; the checker then asks nothing of what is not there, but judges all that is.
std::string wrong(const Session& session, const Plan& plan) {
    std::string out = sentences(checkPlan(session, plan));
    for (const Finding& f : plan.findings)
        if (f.level == Finding::Level::stop && f.cure.empty())
            out += "  a stop without a cure: " + f.field + ": " + f.text.english() + "\n";
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

/// A part of the sessions: parts can be run side by side.
class CheckedPlans : public ::testing::TestWithParam<std::uint64_t> {
protected:
    void check(std::uint64_t seed) {
        SCOPED_TRACE("BASTEWRIGHT_SEED=" + std::to_string(seed) + " BASTEWRIGHT_JOBS=1");
        const Session session = randomSession(seed);
        const SessionRead read = readSession(writeSession(session));
        ASSERT_TRUE(read.session.has_value()) << sentences(read.problems);
        ASSERT_EQ(*read.session, session);

        std::future<Plan> elsewhere;
        if (std::getenv("BASTEWRIGHT_ONCE") == nullptr)
            elsewhere =
                std::async(std::launch::async, [&] { return planWhole(session, options()); });
        const Plan plan = planWhole(session, options());
        const std::string text = writePlan(plan);
        if (elsewhere.valid()) {
            EXPECT_TRUE(text == writePlan(elsewhere.get())) << "planned twice, the plans differ";
        }
        const PlanRead reread = readPlan(text);
        ASSERT_TRUE(reread.plan.has_value()) << sentences(reread.problems);
        EXPECT_TRUE(*reread.plan == plan) << "the plan's file does not read back equal";
        Plan unsaid = *reread.plan;
        forEachSentence(unsaid, [](Sentence& s) {
            if (!s.empty())
                s = "x";
        });
        EXPECT_EQ(sentences(checkPlan(session, unsaid)), sentences(checkPlan(session, plan)))
            << "the checker judges by what people read";

        const std::string complaints = wrong(session, plan);
        EXPECT_EQ(complaints, "");
        if (!complaints.empty())
            keep(seed, session, text);
        possible_ += anyStop(plan.findings) ? 0 : 1;
        for (const Finding& f : plan.findings)
            if (f.level == Finding::Level::stop)
                ++stops_[f.field];
    }

    double possible_ = 0;
    std::map<std::string, int> stops_; ///< by field
};

TEST_P(CheckedPlans, AreGoodOrSayWhyNotAndAreTheSameTwice) {
    const std::uint64_t jobs = number("BASTEWRIGHT_JOBS", 60);
    const std::uint64_t base = number("BASTEWRIGHT_SEED", 1);
    const std::uint64_t first = base + jobs * GetParam() / kParts;
    const std::uint64_t last = base + jobs * (GetParam() + 1) / kParts;
    std::cout << "seeds from " << first << " to before " << last << std::endl;
    for (std::uint64_t seed = first; seed < last; ++seed)
        check(seed);
    const auto done = double(last - first);
    std::cout << possible_ << " of " << done << " sessions can be done; the others stop at:\n";
    for (const auto& [field, times] : stops_)
        std::cout << "  " << times << " × " << field << "\n";
    // Most sessions must be possible, or the test would prove little.
    if (done >= 20) {
        EXPECT_GT(possible_, 0.4 * done);
    }
}

INSTANTIATE_TEST_SUITE_P(Parts, CheckedPlans, ::testing::Range(std::uint64_t{0}, kParts));

} // namespace
} // namespace bastewright::testing
