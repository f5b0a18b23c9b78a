#include "checker/checker.h"
#include "job/job_json.h"
#include "job/json_text.h"
#include "plan/plan_json.h"
#include "plan/sentences.h"
#include "planners/whole/whole.h"
#include "property/checked_plans/random_session.h"
#include "support/patience.h"

#include <gmock/gmock.h>

#include <cstdlib>
#include <ctime>
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

/// Findings whose pointer leads to no place of the session's file.
std::string lostPointers(const Plan& plan, const Json& file) {
    std::string out;
    for (const Finding& f : plan.findings)
        if (f.field.empty() || !file.contains(Json::json_pointer{f.field}))
            out += "  '" + f.field + "': " + f.text.english() + "\n";
    return out;
}

/// A part of the sessions: parts can be run side by side.
class CheckedPlans : public ::testing::Test {
protected:
    void check(std::uint64_t seed) {
        SCOPED_TRACE("BASTEWRIGHT_SEED=" + std::to_string(seed) + " BASTEWRIGHT_JOBS=1");
        checkSession(seed, randomSession(seed));
    }

    void checkSession(std::uint64_t seed, const Session& session) {
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

        EXPECT_EQ(lostPointers(plan, Json::parse(writeSession(session))), "");

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

class ManyCheckedPlans : public CheckedPlans,
                         public ::testing::WithParamInterface<std::uint64_t> {};

TEST_P(ManyCheckedPlans, AreGoodOrSayWhyNotAndAreTheSameTwice) {
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

// In which a pack was said to be joined though a piece did without it (pack-joined), another start
// to be taken than was asked for though none was (other-start), or more of a length on hand to be
// cut into than was (waste-on-hand); and in which the corner of two last rows was basted before the
// second, which then had no anchor (last-rows).
TEST_F(CheckedPlans, OfSessionsThatFoundAMistakeAreGood) {
    for (const char* name : {"pack-joined", "other-start", "waste-on-hand", "last-rows"}) {
        SCOPED_TRACE(name);
        const SessionRead read =
            readSessionFile(BASTEWRIGHT_SOURCE "/tests/property/checked_plans/sessions/" +
                            std::string{name} + ".json");
        ASSERT_TRUE(read.session) << sentences(read.problems);
        checkSession(0, *read.session);
    }
}

/// Twenty quilts on eight tables, 24 people: the most that anybody brings.
Session largest() {
    Session out;
    for (std::uint64_t seed = 1; out.jobs.size() < 20; ++seed) {
        Session some = randomSession(seed);
        Job& job = some.jobs.front();
        if (job.backing.width || job.batting.width || job.batting.pack ||
            !job.batting.pieces.empty() || areaSquareInches(topRect(job.top)) < 60 * 80)
            continue;
        if (job.basting.with == Basting::With::spray) // not in one hall with irons
            continue;
        job.name = "Quilt " + std::to_string(out.jobs.size() + 1);
        job.unit = Unit::inch;
        job.handed.clear();
        for (Fabric& f : job.backing.fabrics)
            f.buyable = true;
        out.jobs.push_back(std::move(job));
    }
    out.severalQuilts = true;
    out.setting.room.tables = {{Length::inches(72), Length::inches(30), 8}};
    out.setting.room.irons = 3;
    for (int i = 1; i <= 24; ++i)
        out.setting.helpers.emplace_back().name = "Helper " + std::to_string(i);
    return out;
}

// Only with BASTEWRIGHT_ALL: planning it takes some seconds.
TEST(TheLargestPlan, IsCheckedWithinASecond) {
    if (std::getenv("BASTEWRIGHT_ALL") == nullptr)
        GTEST_SKIP() << "with BASTEWRIGHT_ALL only";
    const Session session = largest();
    const Plan plan = planWhole(session, {.effort = 0});
    const std::clock_t begin = std::clock();
    const Findings findings = checkPlan(session, plan);
    const double seconds = double(std::clock() - begin) / CLOCKS_PER_SEC;
    std::cout << plan.tasks.size() << " tasks, " << seconds << " s of processor time\n";
    EXPECT_EQ(sentences(findings), "");
    EXPECT_FALSE(anyStop(plan.findings)) << sentences(plan.findings);
    EXPECT_LE(seconds, 1.0 * slowness());
}

INSTANTIATE_TEST_SUITE_P(Parts, ManyCheckedPlans, ::testing::Range(std::uint64_t{0}, kParts));

} // namespace
} // namespace bastewright::testing
