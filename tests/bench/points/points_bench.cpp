#include "bench/points/proof_bench.h"
#include "property/points/made_tops.h"
#include "property/points/points_oracle.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <ctime>

/// Prints the table of docs/computation/points.md: s = 4 in, clear 1/2 in, pins of 1 in, edge 1 in.
/// Every plan is judged by the brute-force oracle of the property tests; exit status 1 where a pin
/// is on a seam or too near one, two are closer than s/2, or a place is farther than s/√2 + 1/8 in.
///
///   bench_points            repeatable layouts, with and without a border
///   bench_points free       'fewest pins'
///   bench_points first      the first complete plan
///   bench_points change     3, 4 and 5 in, then all three again from memory: at most 100 ms each
///   bench_points largest    120 x 120 in: the first plan in 50 ms, the final one in a second
///   bench_points proof      blocks proven, beside COIN-OR CBC
namespace bastewright {
namespace {

/// Milliseconds of this process on one core.
double used(std::clock_t since) {
    return 1000.0 * static_cast<double>(std::clock() - since) / CLOCKS_PER_SEC;
}

/// A change of spacing there and back: plans at 3, 4 and 5 in of one top, then all of them
/// again from what is remembered, which must be the same points.
bool change(const char* kind, Job job) {
    constexpr double kMostMs = 100;
    PatternMemory memory;
    std::vector<std::vector<PlacedPoint>> known;
    bool good = true;
    std::printf("%-28s", kind);
    for (const bool again : {false, true})
        for (const Length spacing : {3_in, 4_in, 5_in}) {
            job.basting.spacing = spacing;
            const std::clock_t start = std::clock();
            const PointsPlan plan = planPoints(job, {.memory = &memory});
            const double ms = used(start);
            std::printf(again ? "  %8.2f" : "  %6.0f", ms);
            if (!again)
                known.push_back(plan.points);
            else
                good &= ms <= kMostMs &&
                        plan.points == known[static_cast<std::size_t>(spacing.in()) - 3];
        }
    std::puts(good ? "" : "  TOO LONG OR OTHERWISE");
    std::fflush(stdout);
    return good;
}

bool row(const char* kind, const Job& job, const PointsOptions& options) {
    const std::clock_t start = std::clock();
    const PointsPlan plan = planPoints(job, options);
    const double ms = used(start);
    const Measured m = measured(job, seamsToKeepClearOf(job), plan.points);
    const double s = job.basting.spacing.in(), r = s / std::sqrt(2.0);
    const Rect top = topRect(job.top);
    const double ratio = static_cast<double>(plan.points.size()) * r * r * 1.5 * std::sqrt(3.0) /
                         areaSquareInches(top);
    const bool good =
        m.farthest <= r + 0.125 && m.closest >= s / 2 - 1e-5 &&
        m.room >= job.basting.clear.in() - 1e-5 && m.edge >= job.basting.edge.in() - 1e-5 &&
        std::none_of(plan.findings.begin(), plan.findings.end(),
                     [](const Finding& f) { return f.level != Finding::Level::note; });
    std::printf(
        "%-28s %3.0f x %3.0f %-8s %5zu  %.3f  %+.3f  %5.2f  %7.1f  %s\n", kind, top.width().in(),
        top.length().in(),
        !job.top.grid                                                                    ? "-"
        : job.top.grid->width() == top.width() || job.top.grid->length() == top.length() ? "none"
                                                                                         : "yes",
        plan.points.size(), ratio, m.farthest - r, m.closest, ms, good ? "" : "RULE BROKEN");
    std::fflush(stdout);
    return good;
}

int run(const PointsOptions& options) {
    std::puts(
        "seams                        top       border    pins  ratio  over r  closest     ms");
    bool good = true;
    for (const Length border : {2_in, 0_in})
        for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                                  Seams::triangles6, Seams::triangles4})
            for (const auto& [w, h] : {std::pair{60_in, 72_in}, {90_in, 108_in}, {108_in, 120_in}})
                if (border > 0_in || (seams != Seams::none && seams != Seams::sashing))
                    good &= row(name(seams), madeTop(seams, w, h, border), options);
    return good ? 0 : 1;
}

int largest() {
    constexpr double kFirstMs = 50, kFinalMs = 1000;
    std::puts("120 x 120 in                  border   first ms  final ms");
    bool good = true;
    for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                              Seams::triangles6, Seams::triangles4})
        for (const Length border : {2_in, 0_in}) {
            const Job job = madeTop(seams, 120_in, 120_in, border);
            std::clock_t start = std::clock();
            planPoints(job, {.effort = 0});
            const double first = used(start);
            start = std::clock();
            planPoints(job, {});
            const double final = used(start);
            const bool inTime = first <= kFirstMs && final <= kFinalMs;
            std::printf("%-28s  %-6s  %9.1f %9.1f  %s\n", name(seams),
                        border > 0_in ? "yes" : "none", first, final, inTime ? "" : "TOO LONG");
            good &= inTime;
        }
    return good ? 0 : 1;
}

int changes() {
    std::puts("108 x 120 in                     3 in    4 in    5 in ms; again 3 in, 4 in, 5 in");
    bool good = true;
    for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                              Seams::triangles6, Seams::triangles4})
        good &= change(name(seams), madeTop(seams, 108_in, 120_in, 2_in));
    return good ? 0 : 1;
}

} // namespace
} // namespace bastewright

int main(int argc, char** argv) {
    using namespace bastewright;
    const auto asked = [&](const char* word) {
        return argc > 1 && std::strcmp(argv[1], word) == 0;
    };
    if (asked("proof"))
        return proofBench();
    if (asked("largest"))
        return largest();
    if (asked("change"))
        return changes();
    return run({.effort = asked("first") ? 0 : 1, .free = asked("free")});
}
