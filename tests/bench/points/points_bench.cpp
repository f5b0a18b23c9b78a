#include "bench/points/small_tops.h"
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
///   bench_points            rows, with and without a border; exit status 1 above the ratios
///   allowed bench_points fewest     free placing bench_points blocks     by the blocks
///   bench_points first      the first complete plan
///   bench_points lines      rows of thread and bands of spray
///   bench_points small      beside what CBC finds on small tops
///   bench_points largest    120 x 120 in: the first plan in 20 ms, the final one in 300 ms
namespace bastewright {
namespace {

/// Milliseconds of this process on one core.
double used(std::clock_t since) {
    return 1000.0 * static_cast<double>(std::clock() - since) / CLOCKS_PER_SEC;
}

/// Ratios to Kershner's bound that rows may take at 90 x 108 in and up; a tenth more below.
double allowed(Seams seams) {
    switch (seams) {
    case Seams::none:
        return 1.05;
    case Seams::sashing:
        return 1.12;
    case Seams::every4:
        return 1.18;
    case Seams::every3:
    case Seams::triangles6:
    case Seams::triangles4:
        return 1.25;
    }
    return 1;
}

bool row(Seams seams, const Job& job, const PointsOptions& options) {
    const std::clock_t start = std::clock();
    const PointsPlan plan = planPoints(job, options);
    const double ms = used(start);
    const Measured m = measured(job, seamsToKeepClearOf(job), plan.points);
    const double s = job.basting.spacing.in(), r = s / std::sqrt(2.0);
    const Rect top = topRect(job.top);
    const double ratio = static_cast<double>(plan.points.size()) * r * r * 1.5 * std::sqrt(3.0) /
                         areaSquareInches(top);
    const bool rows = options.layout == Basting::Layout::rows && options.effort > 0;
    const bool few = !rows || ratio <= allowed(seams) * (top.width() < 88_in ? 1.1 : 1);
    const bool good =
        m.farthest <= r + 0.125 && m.closest >= s / 2 - 1e-5 &&
        m.room >= job.basting.clear.in() - 1e-5 && m.edge >= job.basting.edge.in() - 1e-5 &&
        std::none_of(plan.findings.begin(), plan.findings.end(),
                     [](const Finding& f) { return f.level != Finding::Level::note; });
    std::size_t aside = 0;
    if (plan.rows)
        for (const PinRow& line : plan.rows->lines)
            aside += line.aside.size();
    std::printf("%-28s %3.0f x %3.0f  %5zu  %.3f  %+.3f  %5.2f  %5.3f  %5zu  %6zu  %7.1f  %s%s\n",
                name(seams), top.width().in(), top.length().in(), plan.points.size(), ratio,
                m.farthest - r, m.closest, plan.rows ? plan.rows->slack.in() : 0.0, aside,
                plan.rows ? plan.rows->singles.size() : 0, ms, good ? "" : "RULE BROKEN ",
                few ? "" : "TOO MANY");
    std::fflush(stdout);
    return good && few;
}

int run(const PointsOptions& options) {
    std::puts("seams                        top         pins  ratio  over r  closest slack  aside  "
              "singles      ms");
    bool good = true;
    for (const Length border : {2_in, 0_in})
        for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                                  Seams::triangles6, Seams::triangles4})
            for (const auto& [w, h] : {std::pair{60_in, 72_in}, {90_in, 108_in}, {108_in, 120_in}})
                if (border > 0_in || (seams != Seams::none && seams != Seams::sashing))
                    good &= row(seams, madeTop(seams, w, h, border), options);
    return good ? 0 : 1;
}

/// Rows of stitches, or bands of patches, on a plain top: straight, so that they take more than the
/// bound; the same rules, and of spray as many patches as go from edge to edge, none bare.
bool lines(const char* what, Basting::With with, Length spacing, Length width, Length length) {
    Job job;
    job.top.width = {width};
    job.top.length = {length};
    job.basting.with = with;
    job.basting.spacing = spacing;
    const std::clock_t start = std::clock();
    const PointsPlan plan = planPoints(job);
    const double ms = used(start);
    const Measured m = measured(job, {}, plan.points);
    const double s = spacing.in(), r = s / std::sqrt(2.0);
    const bool patches = with == Basting::With::spray;
    const auto fewest = std::size_t(ceilDiv(width, spacing) * ceilDiv(length, spacing));
    const bool good =
        m.farthest <= r + 0.125 && m.closest >= s / 2 - 1e-5 &&
        (patches ? plan.points.size() == fewest : m.edge >= job.basting.edge.in() - 1e-5) &&
        plan.findings.empty() && plan.rows;
    std::printf("%-8s %5.2f  %3.0f x %3.0f  %5zu  %6.3f  %+.3f  %6.3f  %5.3f  %7.2f  %s\n", what, s,
                width.in(), length.in(), plan.points.size(),
                double(plan.points.size()) / double(plan.bound), m.farthest - r, m.closest,
                plan.rows ? plan.rows->slack.in() : 0.0, ms, good ? "" : "RULE BROKEN");
    return good;
}

int allLines() {
    std::puts("way      apart  top        points  ratio  over r  closest  slack       ms");
    bool good = true;
    for (const auto& [w, h] : {std::pair{60_in, 72_in}, {90_in, 108_in}, {108_in, 120_in}}) {
        for (const Length rows : {3_in, 4_in, 6_in})
            good &= lines("thread", Basting::With::thread, rows, w, h);
        for (const Length deep : {12_in, 15_in, 18_in})
            good &= lines("spray", Basting::With::spray, deep, w, h);
    }
    return good ? 0 : 1;
}

int largest() {
    constexpr double kFirstMs = 20, kFinalMs = 300;
    std::puts("120 x 120 in                  border   first ms  final ms");
    bool good = true;
    for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                              Seams::triangles6, Seams::triangles4})
        for (const Length border : {2_in, 0_in}) {
            const Job job = madeTop(seams, 120_in, 120_in, border);
            std::clock_t start = std::clock();
            planPoints(job, {.effort = 0, .layout = Basting::Layout::rows});
            const double first = used(start);
            start = std::clock();
            planPoints(job, {.layout = Basting::Layout::rows});
            const double final = used(start);
            const bool inTime = first <= kFirstMs && final <= kFinalMs;
            std::printf("%-28s  %-6s  %9.1f %9.1f  %s\n", name(seams),
                        border > 0_in ? "yes" : "none", first, final, inTime ? "" : "TOO LONG");
            good &= inTime;
        }
    return good ? 0 : 1;
}

} // namespace
} // namespace bastewright

int main(int argc, char** argv) {
    using namespace bastewright;
    const auto asked = [&](const char* word) {
        return argc > 1 && std::strcmp(argv[1], word) == 0;
    };
    if (asked("largest"))
        return largest();
    if (asked("lines"))
        return allLines();
    if (asked("small"))
        return smallTops();
    const auto layout = asked("fewest")   ? Basting::Layout::fewest
                        : asked("blocks") ? Basting::Layout::blocks
                                          : Basting::Layout::rows;
    return run({.effort = asked("first") ? 0 : 1, .layout = layout});
}
