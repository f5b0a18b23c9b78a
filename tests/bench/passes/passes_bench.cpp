#include "bench/passes/predictions.h"
#include "planners/passes/passes.h"
#include "planners/surface/arrangement.h"
#include "unit/passes/boards.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <string_view>
#include <vector>

/// Times of the pass planner in processor time beside what they are meant to take; the passes of
/// common quilts on common tables; and that more table or more reach never gives more of them, and
/// changes them by one at most from inch to inch (two where the quilt is turned). Exit status 1
/// where a time exceeds its limit or more hurts.
namespace {

using namespace bastewright;
using Start = Basting::Start;

bool within = true;

Length in(double inches) {
    return Length::inch64ths(static_cast<std::int64_t>(inches * 64));
}

double processorMs() {
    std::timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return double(t.tv_sec) * 1e3 + double(t.tv_nsec) * 1e-6;
}

void report(const char* what, double ms, double limitMs) {
    within = within && ms <= limitMs;
    std::printf("%-64s %9.1f ms  limit %6.0f ms\n", what, ms, limitMs);
}

void everyArrangement() {
    Job job;
    job.top.width = {in(88)};
    job.top.length = {in(112)};
    Setting setting;
    setting.helpers.resize(4);
    const Size top{in(88), in(112)}, backing{in(96), in(120)};
    std::vector<PlacedPoint> points;
    for (const Point& p : testing::rowsAcross(in(88), in(112)).points)
        points.push_back({p, 0});
    const PassRequest request{job, setting, {top, top, backing}, points};
    const auto time = [&](const char* what, std::vector<Table> tables) {
        const double from = processorMs();
        const auto surfaces = arrangements(tables);
        const auto choices = passChoices(request, surfaces);
        char line[128];
        std::snprintf(line, sizeof line, "%s: %zu surfaces, %zu ways, %d passes", what,
                      surfaces.size(), choices.size(), choices.front().summary.passes);
        report(line, processorMs() - from, 1'500);
    };
    time("4 tables of 30 x 72", {{in(72), in(30), 4, {}}});
    time("2 of 30 x 72 and 2 of 24 x 48", {{in(72), in(30), 2, {}}, {in(48), in(24), 2, {}}});
    time("4 different tables", {{in(72), in(30), 1, {}},
                                {in(72), in(36), 1, {}},
                                {in(60), in(30), 1, {}},
                                {in(48), in(30), 1, {}}});
}

void counts() {
    const double tables[][2] = {{30, 48}, {30, 72}, {36, 72},  {30, 144}, {60, 60},
                                {60, 72}, {60, 96}, {60, 108}, {90, 72}};
    const double quilts[][2] = {{40, 50},  {60, 76},   {70, 90},   {78, 94.5}, {88, 112},
                                {90, 108}, {100, 100}, {108, 120}, {120, 120}};
    std::printf("passes from the middle, beside it, from an end; the better way to lie\n%14s", "");
    for (const auto& t : tables)
        std::printf(" %5.0fx%-5.0f", t[0], t[1]);
    for (const auto& q : quilts) {
        const Board board = testing::rowsAcross(in(q[0]), in(q[1]));
        std::printf("\n%6.1f x %5.1f", q[0], q[1]);
        for (const auto& t : tables) {
            char cell[32];
            std::snprintf(cell, sizeof cell, "%zu %zu %zu",
                          testing::fewest(board, in(t[1]), in(t[0]), Start::centred),
                          testing::fewest(board, in(t[1]), in(t[0]), Start::besideMiddle),
                          testing::fewest(board, in(t[1]), in(t[0]), Start::oneEnd));
            std::printf(" %11s", cell);
        }
    }
    std::printf("\n");
}

/// The same on a small table where boundaries may lie at every inch instead of between rows of
/// pins.
void anywhere() {
    for (const auto& [width, length] : {std::pair{78.0, 94.5}, {88.0, 112.0}}) {
        const double from = processorMs();
        const auto passes = [&](const Board& board, Start start) {
            return testing::fewest(board, in(48), in(30), start);
        };
        const Board rows = testing::rowsAcross(in(width), in(length));
        const Board inches = testing::squares(in(width), in(length), in(1));
        std::printf("%5.1f x %5.1f on 30 x 48, between rows: %zu and %zu", width, length,
                    passes(rows, Start::centred), passes(rows, Start::besideMiddle));
        std::printf("; anywhere: %zu and %zu", passes(inches, Start::centred),
                    passes(inches, Start::besideMiddle));
        std::printf(" (%.0f ms)\n", processorMs() - from);
    }
}

/// Table depth and reach inch by inch.
void cliffs() {
    int steps = 0, more = 0, jumps = 0, deep = 0;
    const auto quilts = {std::pair{88.0, 112.0}, {70.0, 90.0}, {78.0, 94.5}, {100.0, 100.0}};
    for (const auto& [width, length] : quilts)
        for (const double along : {72.0, 144.0})
            for (int reach = 24; reach <= 40; ++reach) {
                const Board board = testing::rowsAcross(in(width), in(length));
                std::size_t before = 0, enough = 0;
                for (int depth = 24; depth <= 72; ++depth) {
                    const std::size_t now = testing::fewest(board, in(along), in(depth),
                                                            Start::besideMiddle, in(reach));
                    if (depth <= 2 * reach + 12) {
                        enough = now;
                        if (before > 0) {
                            ++steps;
                            more += now == 0 || now > before ? 1 : 0;
                            jumps += before > now + 2 ? 1 : 0;
                        }
                        before = now;
                    } else {
                        deep += now == 0 || now > enough + 2 ? 1 : 0;
                    }
                }
            }
    std::printf("%d steps of an inch of depth: %d with more passes, %d with more than two fewer; "
                "%d tables too deep with more than two passes more\n",
                steps, more, jumps, deep);
    within = within && more == 0 && deep == 0;
}

} // namespace

/// All parts, or those named: times, counts, anywhere, cliffs, predictions.
int main(int argc, char** argv) {
    const std::vector<std::string_view> parts(argv + 1, argv + argc);
    const auto wanted = [&](std::string_view part) {
        return parts.empty() || std::ranges::find(parts, part) != parts.end();
    };
    if (wanted("anywhere"))
        anywhere();
    if (wanted("times"))
        everyArrangement();
    if (wanted("counts"))
        counts();
    if (wanted("cliffs"))
        cliffs();
    if (wanted("predictions"))
        within = predictionsHold() && within;
    return within ? 0 : 1;
}
