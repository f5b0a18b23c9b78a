#include "planners/passes/passes.h"
#include "planners/surface/arrangement.h"
#include "unit/passes/every_dissection.h"

#include <algorithm>
#include <cstdio>
#include <ctime>

/// Times of the pass planner in processor time beside what they are meant to take; passes beside
/// the least of every dissection, with and without turning the quilt on the table; and what working
/// outward costs. Exit status 1 where a time exceeds its limit.
namespace {

using namespace bastewright;
using testing::Cells;

bool within = true;

double processorMs() {
    std::timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return double(t.tv_sec) * 1e3 + double(t.tv_nsec) * 1e-6;
}

void report(const char* what, double ms, double limitMs) {
    within = within && ms <= limitMs;
    std::printf("%-64s %9.3f ms  limit %6.1f ms\n", what, ms, limitMs);
}

void everyArrangement() {
    Job job;
    job.top.width = {Length::inches(88)};
    job.top.length = {Length::inches(112)};
    Setting setting;
    setting.helpers.resize(4);
    const Size top{Length::inches(88), Length::inches(112)};
    const Size backing{Length::inches(96), Length::inches(120)};
    const PassRequest request{job, setting, {top, top, backing}, 700};
    const auto time = [&](const char* what, std::vector<Table> tables) {
        const double from = processorMs();
        const auto surfaces = arrangements(tables);
        const auto choices = passChoices(request, surfaces);
        char line[128];
        std::snprintf(line, sizeof line, "%s: %zu surfaces, %zu ways", what, surfaces.size(),
                      choices.size());
        report(line, processorMs() - from, 50);
        Length shifted, outward;
        for (const PassChoice& c : choices) {
            shifted += c.summary.shifted;
            outward += c.summary.outwardCost;
        }
        std::printf("    working outward costs at most %.1f %% of all shifts\n",
                    100 * ratio(outward, std::max(shifted, Length::nanometres(1))));
    };
    const auto in = [](int n) { return Length::inches(n); };
    time("4 tables of 30 x 72", {{in(72), in(30), 4}});
    time("2 of 30 x 72 and 2 of 24 x 48", {{in(72), in(30), 2}, {in(48), in(24), 2}});
    time("4 different tables",
         {{in(72), in(30), 1}, {in(72), in(36), 1}, {in(60), in(30), 1}, {in(48), in(30), 1}});
}

Layout gridOf(int columns, int rows) {
    LayoutInput in;
    in.top = {Length::inches(20 * columns + 6), Length::inches(20 * rows + 6)};
    in.surface.table = {Length::inches(30), Length::inches(30)};
    in.surface.field =
        Rect{{}, {}, in.surface.table.width, in.surface.table.length}.grown(Length::inches(-2));
    in.anchor = Length::inches(6);
    for (const Layout& l : layouts(in))
        if (l.shape == Shape::grid)
            return l;
    return {};
}

void orders() {
    for (const auto& [columns, rows, limit] :
         {std::tuple{3, 3, 1.0}, {4 + 1, 3, 5.0}, {5, 5, 20.0}, {5, 7, 500.0}}) {
        const Layout layout = gridOf(columns, rows);
        const double from = processorMs();
        const WorkingOrder order = bestOrder(layout);
        char line[96];
        std::snprintf(line, sizeof line, "order of %zu passes%s; %.3f of the shortest way",
                      layout.areas.size(), order.exact ? ", exact" : "",
                      ratio(order.shifted, shortestWay(layout)));
        report(line, processorMs() - from, limit);
    }
}

int planned(const Cells& c) {
    const Length cell = Length::inches(6);
    LayoutInput in;
    in.top = {cell * c.width, cell * c.length};
    in.surface.table = {cell * c.fieldWidth, cell * c.fieldLength};
    in.surface.field = {{}, {}, in.surface.table.width, in.surface.table.length};
    in.anchor = cell;
    in.start = c.centred ? Basting::Start::centred : Basting::Start::besideMiddle;
    return int(layouts(in).front().areas.size());
}

void againstEveryDissection() {
    for (const bool centred : {true, false}) {
        int cases = 0, least = 0, passes = 0, leastPasses = 0, turned = 0, saved = 0;
        for (const auto& [u, v] : {std::pair{3, 2}, {3, 3}, {4, 3}, {4, 4}, {5, 2}, {6, 2}, {7, 3}})
            for (int w = 2; w <= std::min(8, 3 * u - 2); ++w)
                for (int l = 2; l <= std::min(8, 3 * v - 2); ++l) {
                    Cells c{w, l, u, v, centred};
                    const int ours = planned(c);
                    const int best = testing::leastByEveryDissection(c, ours - 1);
                    ++cases;
                    least += ours == best ? 1 : 0;
                    passes += ours;
                    leastPasses += best;
                    if (u == v)
                        continue;
                    c.turning = true;
                    const int lying = std::min(ours, planned({w, l, v, u, centred}));
                    const int with = testing::leastByEveryDissection(c, lying - 1);
                    turned += with < lying ? 1 : 0;
                    saved += lying - with;
                }
        std::printf("%-14s least of every dissection in %d of %d cases, %.4f of it in all; turning "
                    "the quilt would save in %d, %d passes\n",
                    centred ? "centred:" : "fewest shifts:", least, cases,
                    double(passes) / leastPasses, turned, saved);
    }
}

} // namespace

int main() {
    everyArrangement();
    orders();
    againstEveryDissection();
    return within ? 0 : 1;
}
