#include "planners/backing/backing.h"
#include "planners/batting/batting.h"
#include "planners/batting/join_search.h"
#include "property/layers/dissections.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <functional>
#include <random>
#include <string>
#include <vector>

/// Times of the two layer planners, in processor time, beside what they are meant to take; and how
/// much cloth the layouts save. Exit status 1 where a mean exceeds its limit.
namespace {

using namespace bastewright;

double processorMs() {
    std::timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return double(t.tv_sec) * 1e3 + double(t.tv_nsec) * 1e-6;
}

/// Steps of a search before it says that it does not know: some ten seconds.
constexpr std::uint64_t kSteps = 400'000'000;

bool within = true;

/// Runs every case once; `run` says whether it was solved.
void measure(const char* what, int cases, double limitMs, const std::function<bool(int)>& run) {
    double sum = 0, worst = 0;
    int solved = 0;
    for (int i = 0; i < cases; ++i) {
        const double from = processorMs();
        solved += run(i);
        const double ms = processorMs() - from;
        sum += ms;
        worst = std::max(worst, ms);
    }
    const double mean = sum / cases;
    within = within && mean <= limitMs && solved == cases;
    std::printf("%-64s %3d of %3d  mean %9.3f ms  worst %9.3f ms  limit %7.1f ms\n", what, solved,
                cases, mean, worst, limitMs);
}

Job clothJob(int usable) {
    Job job;
    job.backing.fabrics = {{.name = "cloth", .usableWidth = Length::inches(usable)}};
    return job;
}

void backingTimes() {
    measure("backing, one cloth, with list and nearest miss", 400, 1, [](int i) {
        return planBacking(clothJob(36 + i % 9),
                           {Length::inches(44 + i % 80), Length::inches(44 + 7 * i % 84)})
            .plan.has_value();
    });
    // Every quilt of 36 … 120 in by twos, at usable widths of 36 … 44 and 104 … 118 in.
    constexpr int kSides = 43, kWidths = 24;
    measure("backing, every quilt at every usable width", kSides * kSides * kWidths, 1, [](int i) {
        const int u = i % kWidths, w = i / kWidths % kSides, l = i / kWidths / kSides;
        return planBacking(clothJob(u < 9 ? 36 + u : 104 + u - 9),
                           {Length::inches(44 + 2 * w), Length::inches(44 + 2 * l)})
            .plan.has_value();
    });
    measure("backing, 12 cloths, every way laid out for the screen", 40, 16, [](int i) {
        std::mt19937_64 random{std::uint64_t(i)};
        Job job;
        for (int f = 0; f < 12; ++f)
            job.backing.fabrics.push_back(
                {.name = std::to_string(f),
                 .usableWidth = Length::inches(36 + std::int64_t(random() % 9)),
                 .onHand = Length::inches(std::int64_t(random() % 2 * random() % 170))});
        BackingOptions options;
        options.ways = true;
        return planBacking(job,
                           {Length::inches(60 + std::int64_t(random() % 60)),
                            Length::inches(60 + std::int64_t(random() % 60))},
                           options)
            .plan.has_value();
    });
    for (const int cloths : {2, 4, 8, 12})
        measure(
            ("backing, " + std::to_string(cloths) + " cloths, some on hand").c_str(), 40,
            cloths <= 4 ? 5 : 50, [&](int i) {
                std::mt19937_64 random{std::uint64_t(i)};
                Job job;
                for (int f = 0; f < cloths; ++f)
                    job.backing.fabrics.push_back(
                        {.name = std::to_string(f),
                         .usableWidth = Length::inches(36 + std::int64_t(random() % 9)),
                         .onHand = Length::inches(std::int64_t(random() % 2 * random() % 170))});
                return planBacking(job, {Length::inches(60 + std::int64_t(random() % 60)),
                                         Length::inches(60 + std::int64_t(random() % 60))})
                    .plan.has_value();
            });
}

/// What people would sew against the least bought, over all quilts of 40 … 120 in by fours.
void backingRatios() {
    int across = 0, all = 0, pieced = 0, spared = 0;
    double more = 0, seamsChosen = 0, seamsLeast = 0;
    BackingOptions options;
    options.nearestMiss = false;
    for (int w = 40; w <= 120; w += 4)
        for (int l = 40; l <= 120; l += 4) {
            const auto plan =
                *planBacking(clothJob(42), {Length::inches(w + 8), Length::inches(l + 8)}, options)
                     .plan;
            const auto chosen =
                *std::ranges::find(plan.alternatives, true, &BackingAlternative::chosen);
            const auto least = std::ranges::min(plan.alternatives, {}, &BackingAlternative::bought);
            ++all;
            across += !plan.along;
            pieced += chosen.seams > 2;
            spared += chosen.bought > least.bought;
            more += (chosen.bought - least.bought).in() / 36;
            seamsChosen += chosen.seams;
            seamsLeast += least.seams;
        }
    std::printf(
        "of %d quilts at 42 in: %.2f seams on average, the least bought %.2f; in %d another "
        "than the least bought is sewn, %.2f yd more on average; a strip is pieced or three "
        "seams sewn in %d; across wins in %d\n",
        all, seamsChosen / all, seamsLeast / all, spared, more / std::max(spared, 1), pieced,
        across);
}

/// A batting of 92 × 116 in cut into n pieces by straight cuts; each `spare` larger than needed.
Job plantedJob(int seed, int n, int decoys, bool turn, double spare) {
    std::mt19937_64 random{std::uint64_t(seed)};
    Job job;
    job.batting.mayTurn = turn;
    auto& pieces = job.batting.pieces;
    const std::function<void(double, double, int)> cut = [&](double w, double l, int parts) {
        if (parts == 1) {
            const bool swap = turn && random() % 2 == 0;
            const Length a = Length::nearestInches(w + 2.5 + spare);
            const Length b = Length::nearestInches(l + 2.5 + spare);
            pieces.push_back({std::to_string(pieces.size()), swap ? b : a, swap ? a : b, 1});
            return;
        }
        const int first = 1 + int(random() % std::uint64_t(parts - 1));
        const bool upright = (w > l) != (random() % 4 == 0);
        const double whole = upright ? w : l;
        const double at =
            std::clamp(double(int(4 * whole * first / parts)) / 4, 0.25, whole - 0.25);
        cut(upright ? at : w, upright ? l : at, first);
        cut(upright ? w - at : w, upright ? l : l - at, parts - first);
    };
    cut(92 - 1.5, 116 - 1.5, n);
    for (int d = 0; d < decoys; ++d)
        pieces.push_back({"decoy " + std::to_string(d),
                          Length::inches(10 + std::int64_t(random() % 20)),
                          Length::inches(10 + std::int64_t(random() % 30)), 1});
    return job;
}

void battingTimes() {
    measure("batting, packs and rolls for any quilt", 400, 1, [](int i) {
        return planBatting(Job{}, {Length::inches(40 + i % 120), Length::inches(40 + 7 * i % 130)})
            .plan.has_value();
    });
    struct Kind {
        const char* what;
        int pieces, decoys;
        bool turn;
        double spare, limitMs;
    };
    for (const Kind k : {Kind{"batting, 10 pieces", 10, 0, false, 0, 5},
                         Kind{"batting, 10 pieces, 1/2 in spare", 10, 0, false, 0.5, 5},
                         Kind{"batting, 12 pieces", 12, 0, false, 0, 50},
                         Kind{"batting, 12 pieces, turning", 12, 0, true, 0, 50},
                         Kind{"batting, 12 pieces, turning, 1/2 in spare", 12, 0, true, 0.5, 50},
                         Kind{"batting, 12 pieces, turning, 1 in spare", 12, 0, true, 1, 50},
                         Kind{"batting, 10 pieces, turning, 1 in spare", 10, 0, true, 1, 5},
                         Kind{"batting, 10 pieces and 3 decoys", 10, 3, false, 0, 500},
                         Kind{"batting, 10 and 3 decoys, turning, 1 in spare", 10, 3, true, 1, 500},
                         Kind{"batting, pool of 20, all needed", 20, 0, false, 0, 2000},
                         Kind{"batting, pool of 20, 8 needed", 8, 12, false, 0.5, 2000},
                         Kind{"batting, pool of 20, 8 needed, turning", 8, 12, true, 0.5, 2000}})
        measure(k.what, 20, k.limitMs, [&](int seed) {
            return planBatting(plantedJob(seed, k.pieces, k.decoys, k.turn, k.spare),
                               {Length::inches(92), Length::inches(116)})
                .plan.has_value();
        });
    // Beyond what all subsets can be tried of: joined, or said how far the search went.
    measure("batting, pool of 20, turning, 1/2 in spare, all needed", 5, 2000, [](int seed) {
        const auto out = planBatting(plantedJob(seed, 20, 0, true, 0.5),
                                     {Length::inches(92), Length::inches(116)});
        return out.plan || out.findings.back().text.english().find("as far as the search went") !=
                               std::string::npos;
    });
    measure("batting, one piece of 6 missing: least to buy", 20, 500, [](int seed) {
        Job job = plantedJob(seed, 6, 0, false, 0);
        job.batting.pieces.pop_back();
        const auto out = planBatting(job, {Length::inches(92), Length::inches(116)});
        return out.plan || !out.findings.back().cure.empty();
    });
}

/// The published sets that leave no waste, and the squared rectangles: what is known of them is the
/// tiling they were made from, so with turning the answer is the search's own.
void zeroWaste() {
    std::printf("\n%-24s %6s  %-22s %12s  %-22s %12s\n", "nothing to spare", "pieces",
                "as they lie", "ms", "turning", "ms");
    const auto of = [](const dissections::Dissection& d, bool turn, double& ms) {
        batting::JoinProblem p{{Length::inches(d.width), Length::inches(d.length)}, {}, turn};
        for (const auto& r : d.pieces)
            p.items.push_back({Length::inches(r.width), Length::inches(r.length)});
        const double from = processorMs();
        batting::JoinSearch search{std::move(p), kSteps};
        const batting::Possible possible = search.possible(int(d.pieces.size()));
        ms = processorMs() - from;
        return possible;
    };
    const auto text = [](batting::Possible p) {
        return p == batting::Possible::yes  ? "joined"
               : p == batting::Possible::no ? "no straight-cut join"
                                            : "unknown";
    };
    for (const auto* sets : {&dissections::kHopperTurton, &dissections::kSquared})
        for (const auto& d : *sets) {
            double plainMs = 0, turningMs = 0;
            const auto plain = of(d, false, plainMs), turning = of(d, true, turningMs);
            within = within &&
                     plain == (d.straightCuts ? batting::Possible::yes : batting::Possible::no);
            std::printf("%-24s %6zu  %-22s %12.2f  %-22s %12.2f\n", d.name, d.pieces.size(),
                        text(plain), plainMs, text(turning), turningMs);
        }
}

} // namespace

int main() {
    backingTimes();
    backingRatios();
    battingTimes();
    zeroWaste();
    return within ? 0 : 1;
}
