#include "bench/points/proof_bench.h"

#include "planners/points/cover_proof.h"
#include "planners/points/grid_layout.h"
#include "property/points/made_tops.h"
#include "unit/points/tile_model.h"

#include <cmath>
#include <cstdio>
#include <ctime>

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
    return good ? 0 : 1;
}

} // namespace bastewright
