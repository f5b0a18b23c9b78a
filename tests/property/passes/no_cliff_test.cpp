#include "property/passes/outcome.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <map>
#include <tuple>

// An inch more or less of reach or of table depth changes little: 88 × 112 in on one, two and three
// tables 72 in long, alone and with four people. In every run some steps are tried; all of them
// where BASTEWRIGHT_ALL is set.
namespace bastewright::testing {
namespace {

constexpr int kLeastReach = 20, kMostReach = 36, kLeastDepth = 24, kMostDepth = 72;

/// Whoever leans gets so much farther.
constexpr int kLean = 4, kPulled = 12;

Session made(int depth, int reach, int tables, int people) {
    Session out;
    Job& job = out.jobs.emplace_back();
    job.top.width = {88_in};
    job.top.length = {112_in};
    out.setting.room.tables = {{72_in, Length::inches(depth), tables, {}}};
    for (const char* name : {"Ada", "Bo", "Cai", "Dot"}) {
        if (static_cast<int>(out.setting.helpers.size()) == people)
            break;
        out.setting.helpers.emplace_back().name = name;
        out.setting.helpers.back().reach = Length::inches(reach);
    }
    return out;
}

class NoCliff : public ::testing::TestWithParam<std::tuple<int, int>> {
protected:
    const Outcome& at(int depth, int reach) {
        const auto [tables, people] = GetParam();
        const auto known = known_.find({depth, reach});
        if (known != known_.end())
            return known->second;
        const Plan plan = planWhole(made(depth, reach, tables, people), {.memory = &memory_});
        return known_.emplace(std::pair{depth, reach}, outcomeOf(plan)).first->second;
    }

    static bool tooDeep(int depth, int reach) { return depth > 2 * (reach + kLean) + kPulled; }

    void step(int depth, int reach, int depthAfter, int reachAfter) {
        const auto [tables, people] = GetParam();
        const Outcome a = at(depth, reach), b = at(depthAfter, reachAfter);
        SCOPED_TRACE(std::to_string(tables) + " tables, " + std::to_string(people) + " people, " +
                     std::to_string(depth) + " in deep, reach " + std::to_string(reach) +
                     ", then " + std::to_string(depthAfter) + " and " + std::to_string(reachAfter));
        ++steps_;
        EXPECT_EQ(a.stops, 0);
        EXPECT_EQ(b.stops, 0);
        const bool turned = a.quiltLengthAlongLength != b.quiltLengthAlongLength;
        // From a table just deep enough to one too deep is another table, not more of it.
        if (tooDeep(depthAfter, reachAfter) && !tooDeep(depth, reach)) {
            EXPECT_LE(b.passes, a.passes + 2) << a << "; then " << b;
        } else {
            EXPECT_LE(std::abs(a.passes - b.passes), turned ? 2 : 1) << a << "; then " << b;
        }
        const auto change = std::abs((a.finish - b.finish).count());
        const auto allowed = std::max(0.12 * double(std::min(a.finish, b.finish).count()),
                                      double(std::max(a.longestPass, b.longestPass).count()));
        EXPECT_LE(double(change), allowed) << a << "; then " << b;
        worst_ = std::max(worst_, double(change) / double(std::min(a.finish, b.finish).count()));
    }

    std::map<std::pair<int, int>, Outcome> known_;
    PointsMemory memory_;
    int steps_ = 0;
    double worst_ = 0;
};

TEST_P(NoCliff, FromInchToInch) {
    const auto [tables, people] = GetParam();
    if (std::getenv("BASTEWRIGHT_ALL") != nullptr) {
        for (const int reach : {20, 24, 27, 31, 36})
            for (int depth = kLeastDepth; depth < kMostDepth; ++depth)
                step(depth, reach, depth + 1, reach);
        for (const int depth : {24, 30, 36, 44, 48, 60, 72})
            for (int reach = kLeastReach; reach < kMostReach; ++reach)
                step(depth, reach, depth, reach + 1);
    } else {
        // Another few for each number of tables and people.
        const int from = 8 * tables + 3 * people;
        const int depth = kLeastDepth + from % (kMostDepth - kLeastDepth);
        const int reach = kLeastReach + from % (kMostReach - kLeastReach);
        step(depth, reach, depth + 1, reach);
        step(depth, reach, depth, reach + 1);
    }
    std::cout << steps_ << " steps; the finish changes by " << 100 * worst_ << " % at most\n";
}

INSTANTIATE_TEST_SUITE_P(Rooms, NoCliff,
                         ::testing::Combine(::testing::Values(1, 2, 3), ::testing::Values(1, 4)));

} // namespace
} // namespace bastewright::testing
