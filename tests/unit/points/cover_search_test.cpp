#include "planners/points/cover_search.h"
#include "support/random.h"
#include "unit/points/solver.h"

#include <gtest/gtest.h>

#include <cmath>

namespace bastewright {
namespace {

using namespace points;

constexpr const char* kNoSolver = "SKIPPED: neither cbc nor glpsol can be called (Debian packages "
                                  "coinor-cbc, glpk-utils); optima are not compared";

bool takeAll(CoverSearch&) {
    return true;
}

/// Random places, witnesses and costs; the same instance for the search and for the solver.
struct Instance {
    Spots candidates, witnesses;
    std::vector<int> costs;
    double radius = 2, gap = 0.8;
};

Instance randomInstance(std::uint64_t seed) {
    Random r{seed};
    Instance out;
    const bool even = r.chance(50);
    for (int i = r.count(40, 90); i > 0; --i) {
        out.candidates.push_back({r.real(0, 10), r.real(0, 10)});
        out.costs.push_back(even ? 1 : r.count(1, 4));
    }
    for (int i = r.count(40, 120); i > 0; --i)
        out.witnesses.push_back({r.real(0, 10), r.real(0, 10)});
    return out;
}

CoverModel modelOf(const Instance& in) {
    CoverModel m;
    m.costs = in.costs;
    for (const Spot w : in.witnesses) {
        std::vector<int> row;
        for (std::size_t c = 0; c < in.candidates.size(); ++c)
            if (distanceSquared(in.candidates[c], w) <= squared(in.radius - 2e-6))
                row.push_back(static_cast<int>(c));
        if (!row.empty())
            m.rows.push_back(row);
    }
    for (std::size_t a = 0; a < in.candidates.size(); ++a)
        for (std::size_t b = a + 1; b < in.candidates.size(); ++b)
            if (distanceSquared(in.candidates[a], in.candidates[b]) <= squared(in.gap - 1e-7))
                m.apart.emplace_back(static_cast<int>(a), static_cast<int>(b));
    return m;
}

TEST(CoverSearch, ReachesTheOptimumOfSmallInstances) {
    if (!solverAvailable())
        GTEST_SKIP() << kNoSolver;
    int compared = 0;
    for (std::uint64_t seed = 1; seed <= 25; ++seed) {
        const Instance in = randomInstance(seed);
        const auto best = solved(modelOf(in), 20);
        if (!best || !best->proven)
            continue; // no choice keeps all pairs apart
        CoverSearch search{{0, 0, 10, 10}, in.radius, in.gap};
        for (std::size_t c = 0; c < in.candidates.size(); ++c)
            search.addCandidate(in.candidates[c], in.costs[c]);
        for (const Spot w : in.witnesses)
            search.addWitness(w);
        Dice dice{seed};
        CoverSearch::Limits limits;
        limits.steps = 20000;
        const auto result = search.search(limits, dice, takeAll, {});
        ASSERT_TRUE(result.found) << "seed " << seed;
        EXPECT_EQ(result.cost, std::lround(best->cost)) << "seed " << seed;
        ++compared;
    }
    EXPECT_GE(compared, 15);
}

} // namespace
} // namespace bastewright
