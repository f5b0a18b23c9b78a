#include "planners/points/cover_proof.h"
#include "planners/points/cover_search.h"
#include "planners/points/grid_layout.h"
#include "planners/points/holes.h"
#include "planners/points/tile.h"
#include "property/points/made_tops.h"
#include "support/random.h"
#include "unit/points/solver.h"
#include "unit/points/tile_model.h"

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

class TileOptimum : public testing::TestWithParam<Seams> {};

// 'Proven optimum of its raster and symmetry': by our own branch and bound, and by COIN-OR CBC where
// it can be called and answers in time. The planner also looks without symmetry.
TEST_P(TileOptimum, BlockPatternsNeedNoMoreThanTheProvenOptimum) {
    const Job job = madeTop(GetParam(), 108_in, 120_in, 2_in);
    const Rules rules = rulesFor(job);
    const BlockFrame frame = *frameOf(job);
    TileRequest request;
    request.column = request.row = 1;
    request.steps = 1500;
    const auto patterns = tilePatterns(rules, frame, request, {});
    ASSERT_FALSE(patterns.empty());
    const int used = static_cast<int>(patterns.front().points.size());
    TileModel model{rules, frame};
    const CoverProof proof = prove(model.task(), 400'000);
    EXPECT_EQ(proof.bound, proof.cost);
    EXPECT_LE(used, proof.bound);
    if (!cbcAvailable())
        GTEST_SKIP() << kNoSolver;
    if (GetParam() == Seams::sashing || GetParam() == Seams::every4)
        return; // bench_points proof has them: CBC takes minutes
    const auto best = model.bound(used, 60);
    ASSERT_TRUE(best);
    EXPECT_EQ(std::lround(best->cost), proof.bound);
}
INSTANTIATE_TEST_SUITE_P(Points, TileOptimum,
                         testing::Values(Seams::sashing, Seams::every4, Seams::every3,
                                         Seams::triangles6, Seams::triangles4));

// A choice too few is refuted, one more is found, and what is found covers.
TEST(CoverProof, IsRightOnSmallCases) {
    CoverTask task;
    task.fields = {{0, 0, 4, 4}};
    task.radius = 1.5;
    task.gap = 0.5;
    for (double y = 0; y <= 4; y += 0.5)
        for (double x = 0; x <= 4; x += 0.5)
            task.orbits.push_back({{x, y}});
    // Four discs round the middles of the quarters: √2; three would need 0.5039 · 4 = 2.016.
    const CoverProof proof = prove(task, 100'000);
    EXPECT_TRUE(proof.ended);
    EXPECT_EQ(proof.cost, 4);
    EXPECT_EQ(proof.bound, 4);
    Spots chosen;
    for (const int c : proof.choice)
        chosen.push_back(task.orbits[static_cast<std::size_t>(c)].front());
    EXPECT_TRUE(holes(chosen, task.fields.front(), task.radius).empty());
    // With nothing allowed nearer to the corners than its reach there is no cover at all.
    task.orbits = {{{2, 2}}, {{2, 1}}};
    EXPECT_EQ(prove(task, 1000).cost, 0);
}

} // namespace
} // namespace bastewright
