#include "planners/points/cover_search.h"
#include "planners/points/grid_layout.h"
#include "planners/points/holes.h"
#include "planners/points/tile.h"
#include "property/points/made_tops.h"
#include "support/random.h"
#include "unit/points/solver.h"

#include <gtest/gtest.h>

#include <cmath>
#include <ctime>
#include <map>

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

/// The covering problem of one block on a torus with half-turn symmetry, on the planner's raster of
/// places. Built without the planner's search; witnesses are added until an optimum leaves no hole.
class TileModel {
public:
    TileModel(const Rules& rules, const BlockFrame& f)
        : rules_{rules}
        , f_{f} {
        const Spot corner{f.first.x + f.pitchX, f.first.y + f.pitchY};
        const auto key = [](Spot s) {
            return std::pair{std::lround(s.x * 64), std::lround(s.y * 64)};
        };
        std::map<std::pair<long, long>, bool> seen;
        for (double y = 0; y < f.pitchY - 1e-7; y += rules.step)
            for (double x = 0; x < f.pitchX - 1e-7; x += rules.step) {
                const Spot p{x, y};
                const Spot q{wrap(f.blockX - x, f.pitchX), wrap(f.blockY - y, f.pitchY)};
                if (seen[key(p)] || !rules.pin.angleAt(corner + p) ||
                    !rules.pin.angleAt(corner + q))
                    continue;
                seen[key(p)] = seen[key(q)] = true;
                if (key(p) == key(q))
                    orbits_.push_back({p});
                else if (apart2(p, q) >= squared(rules.gap - 1e-7))
                    orbits_.push_back({p, q});
            }
        for (const Spots& o : orbits_)
            model_.costs.push_back(static_cast<int>(o.size()));
        for (std::size_t a = 0; a < orbits_.size(); ++a)
            for (std::size_t b = a + 1; b < orbits_.size(); ++b)
                if (tooNear(orbits_[a], orbits_[b]))
                    model_.apart.emplace_back(static_cast<int>(a), static_cast<int>(b));
        for (double y = 0; y < f.pitchY; y += 0.75)
            for (double x = 0; x < f.pitchX; x += 0.75)
                require({x, y});
    }

    /// A proven lower bound: the optimum that covers the witnesses. Witnesses are added until it is
    /// `wanted` or leaves no hole, so that in the end it is the optimum itself.
    std::optional<Solved> bound(double wanted) {
        double seconds = 0;
        for (int round = 0; round < 12; ++round) {
            auto best = solved(model_, 60);
            if (!best || !best->proven)
                return {};
            seconds += best->seconds;
            Spots all;
            for (const int c : best->chosen)
                for (const Spot p : orbits_[static_cast<std::size_t>(c)])
                    for (int j = -1; j <= 1; ++j)
                        for (int i = -1; i <= 1; ++i)
                            all.push_back({p.x + i * f_.pitchX, p.y + j * f_.pitchY});
            const Spots open = holes(all, {0, 0, f_.pitchX, f_.pitchY}, rules_.radius);
            if (open.empty() || best->cost >= wanted - 1e-6) {
                best->seconds = seconds;
                return best;
            }
            for (const Spot w : open)
                require(w);
        }
        return {};
    }

private:
    static double wrap(double v, double period) {
        v = std::fmod(v + 2 * period, period);
        return period - v < 1e-7 ? 0.0 : v;
    }
    double apart2(Spot a, Spot b) const {
        const double dx = std::abs(a.x - b.x), dy = std::abs(a.y - b.y);
        return squared(std::min(dx, f_.pitchX - dx)) + squared(std::min(dy, f_.pitchY - dy));
    }
    bool tooNear(const Spots& a, const Spots& b) const {
        return std::any_of(a.begin(), a.end(), [&](Spot p) {
            return std::any_of(b.begin(), b.end(),
                               [&](Spot q) { return apart2(p, q) < squared(rules_.gap - 1e-7); });
        });
    }
    void require(Spot w) {
        std::vector<int> row;
        for (std::size_t c = 0; c < orbits_.size(); ++c)
            if (std::any_of(orbits_[c].begin(), orbits_[c].end(),
                            [&](Spot p) { return apart2(p, w) <= squared(rules_.radius - 2e-6); }))
                row.push_back(static_cast<int>(c));
        model_.rows.push_back(std::move(row));
    }

    const Rules& rules_;
    BlockFrame f_;
    std::vector<Spots> orbits_;
    CoverModel model_;
};

class TileOptimum : public testing::TestWithParam<Seams> {};

// 'Proven optimum of its raster and symmetry' by COIN-OR CBC; the planner also looks without
// symmetry.
TEST_P(TileOptimum, BlockPatternsNeedNoMoreThanTheProvenOptimum) {
    if (!cbcAvailable())
        GTEST_SKIP() << kNoSolver;
    const Job job = madeTop(GetParam(), 108_in, 120_in, 2_in);
    const Rules rules = rulesFor(job);
    const BlockFrame frame = *frameOf(job);
    TileRequest request;
    request.column = request.row = 1;
    request.steps = 1000;
    const std::clock_t start = std::clock();
    request.quick = true;
    const auto first = tilePatterns(rules, frame, request, {});
    const double own = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    request.quick = false;
    const auto patterns = tilePatterns(rules, frame, request, {});
    ASSERT_FALSE(first.empty());
    ASSERT_FALSE(patterns.empty());
    const auto best =
        TileModel{rules, frame}.bound(static_cast<double>(patterns.front().points.size()));
    ASSERT_TRUE(best);
    std::printf("%s: %zu points at first (%.3f s), %zu at last; no fewer with half-turns than %.0f "
                "(%.1f s)\n",
                name(GetParam()), first.front().points.size(), own, patterns.front().points.size(),
                best->cost, best->seconds);
    EXPECT_LE(static_cast<double>(patterns.front().points.size()), best->cost + 1e-6);
}
INSTANTIATE_TEST_SUITE_P(Points, TileOptimum, testing::Values(Seams::every4, Seams::triangles6));

} // namespace
} // namespace bastewright
