#include "bench/points/proof_bench.h"

#include "planners/points/cover_proof.h"
#include "planners/points/grid_layout.h"
#include "planners/points/torus.h"
#include "property/points/made_tops.h"
#include "unit/points/tile_model.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <set>

namespace bastewright {
namespace {

using namespace points;

constexpr int kSolverSeconds = 120;

bool proved(const char* what, const Job& job) {
    const Rules rules = rulesFor(job);
    const BlockFrame frame = *frameOf(job);
    TileModel model{rules, frame};
    const std::clock_t start = std::clock();
    const CoverProof proof = prove(model.task(), 2'000'000);
    const double own = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    std::printf("%-28s %4zu candidates  least %2d, none with %2d  %8ld nodes %7.3f s  ", what,
                model.candidates(), proof.cost, proof.bound - 1, proof.nodes, own);
    bool good = proof.cost == proof.bound;
    if (!cbcAvailable()) {
        std::puts("CBC SKIPPED: cannot be called (Debian package coinor-cbc)");
    } else if (const auto other = model.bound(proof.cost, kSolverSeconds)) {
        good &= std::lround(other->cost) == proof.cost;
        std::printf("CBC %.0f in %.1f s, %.0f times as long%s\n", other->cost, other->seconds,
                    other->seconds / own, good ? "" : "  THEY DIFFER");
    } else {
        std::printf("CBC no answer in %d s, more than %.0f times as long\n", kSolverSeconds,
                    kSolverSeconds / own);
    }
    std::fflush(stdout);
    return good;
}

/// Two blocks on one torus, with the moves that leave a choice as it is. What is proven may stay
/// below what is used: branch and bound ends at `kPairNodes` a cost.
bool provedPair(const char* what, const Job& job, bool across, const Group& group,
                const char* moves) {
    constexpr long kPairNodes = 400'000;
    const Rules rules = rulesFor(job);
    const int x = across ? 2 : 1, y = across ? 1 : 2;
    const Torus torus{rules, *frameOf(job), x, y, x, y};
    CoverTask task;
    task.fields = {torus.field()};
    task.radius = rules.radius;
    task.gap = rules.gap;
    std::set<std::pair<long, long>> seen;
    for (const Spot p : torus.candidates(rules.step)) {
        const auto key = [](Spot s) {
            return std::pair{std::lround(s.x * 1e5), std::lround(s.y * 1e5)};
        };
        if (seen.contains(key(p)))
            continue;
        const Spots orbit = torus.orbit(p, group);
        for (const Spot q : orbit)
            seen.insert(key(q));
        if (!std::all_of(orbit.begin(), orbit.end(), [&](Spot q) { return torus.allowed(q); }))
            continue;
        task.orbits.push_back(torus.copies(orbit));
        task.costs.push_back(static_cast<int>(orbit.size()));
    }
    const std::clock_t start = std::clock();
    const CoverProof proof = prove(task, kPairNodes);
    std::printf("two %-24s %4zu candidates  %s, %s: none with %2d", what, task.orbits.size(),
                across ? "side by side" : "one below the other", moves, proof.bound - 1);
    if (proof.ended)
        std::printf(", least %d", proof.cost);
    std::printf("  %ld nodes %.1f s\n", proof.nodes,
                static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    std::fflush(stdout);
    return proof.bound > 1;
}

} // namespace

int proofBench() {
    bool good = true;
    for (const Seams seams : {Seams::every4, Seams::every3, Seams::triangles6, Seams::triangles4,
                              Seams::sashing})
        good &= proved(name(seams), madeTop(seams, 108_in, 120_in, 2_in));
    Job nine;
    nine.top.width = {90_in};
    nine.top.length = {108_in};
    nine.quilting.method = Quilting::Method::inTheDitch;
    BlockGrid g;
    g.columns = 9;
    g.rows = 11;
    g.block = 9_in;
    g.innerX = g.innerY = {3_in, 6_in};
    nine.top.grid = g;
    good &= proved("9 in blocks, 3 in seams", nine);
    using enum Move::Turn;
    for (const Seams seams :
         {Seams::every4, Seams::every3, Seams::triangles6, Seams::triangles4})
        good &= provedPair(name(seams), madeTop(seams, 108_in, 120_in, 2_in), true, {{halfTurn}},
                           "half-turns");
    good &= provedPair(name(Seams::every4), madeTop(Seams::every4, 108_in, 120_in, 2_in), true,
                       {{mirrorX}, {mirrorY}}, "mirrored both ways");
    return good ? 0 : 1;
}

} // namespace bastewright
