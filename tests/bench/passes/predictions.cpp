#include "bench/passes/predictions.h"

#include "planners/whole/help.h"
#include "planners/whole/quilt.h"
#include "planners/whole/ways.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>

namespace bastewright {
namespace {

constexpr double kOff = 0.03, kNear = 1.25;

double processorMs() {
    std::timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return double(t.tv_sec) * 1e3 + double(t.tv_nsec) * 1e-6;
}

struct Made {
    const char* what;
    Session session;
};

Session made(Size top, std::vector<Table> tables, int people) {
    Session out;
    Job& job = out.jobs.emplace_back();
    job.top.width = {top.width};
    job.top.length = {top.length};
    out.setting.room.tables = std::move(tables);
    for (const char* name : {"Ada", "Bo", "Cai", "Dot", "Eli", "Fay", "Gus", "Hal"})
        if (static_cast<int>(out.setting.helpers.size()) < people)
            out.setting.helpers.emplace_back().name = name;
    return out;
}

std::vector<Made> sessions() {
    const Table banquet{72_in, 30_in, 2, {}};
    std::vector<Made> out{
        {"88 x 112, two 30 x 72, four people", made({88_in, 112_in}, {banquet}, 4)},
        {"88 x 112, two 30 x 72, alone", made({88_in, 112_in}, {banquet}, 1)},
        {"70 x 90, three 30 x 72, two people", made({70_in, 90_in}, {{72_in, 30_in, 3, {}}}, 2)},
        {"60 x 76, one 36 x 72, three people", made({60_in, 76_in}, {{72_in, 36_in, 1, {}}}, 3)},
        {"100 x 100, 60 x 60, four people", made({100_in, 100_in}, {{60_in, 60_in, 1, {}}}, 4)},
    };
    out.push_back(
        {"88 x 112, eight people, two gone after two hours", made({88_in, 112_in}, {banquet}, 8)});
    for (Helper& h : out.back().session.setting.helpers)
        if (&h - out.back().session.setting.helpers.data() < 2)
            h.until =
                ClockTime{out.back().session.setting.start.sinceMidnight + std::chrono::hours{2}};
    out.push_back({"120 x 120, four 30 x 72, eight people",
                   made({120_in, 120_in}, {{72_in, 30_in, 4, {}}}, 8)});
    out.push_back(
        {"120 x 120, one 30 x 48, alone", made({120_in, 120_in}, {{48_in, 30_in, 1, {}}}, 1)});
    Session seated = out.front().session;
    seated.setting.helpers.back().seated = true;
    seated.setting.helpers.back().reach = 25_in;
    out.push_back({"88 x 112, two 30 x 72, one of four seated", seated});
    Session walled = out.front().session;
    walled.setting.room.walls = {Side::head};
    out.push_back({"88 x 112, two 30 x 72, at a wall", walled});
    return out;
}

} // namespace

bool predictionsHold() {
    std::puts("ways                                             near  off by at most  on the "
              "average  ms to even out, to plan");
    bool good = true;
    for (const auto& [what, session] : sessions()) {
        const std::vector<LayerSizes> layers{layerSizes(session.jobs.front())};
        const std::vector<PointsPlan> points = planAllPoints(session, {}, {});
        std::vector<LayoutMemory> memories(1);
        ChosenWays chosen = chooseWays(session, shareRoom(session, layers, points, memories),
                                       layers, points, memories, {});
        const std::vector<std::vector<PlacedPoint>> places{points.front().points};
        int near = 0;
        double most = 0, sum = 0, even = 0, full = 0;
        for (PassChoice& way : chosen.shared.front().choices) {
            if (!way.summary.workable ||
                double(way.summary.predicted.count()) > kNear * double(chosen.crew.finish.count()))
                continue;
            const Seconds said = way.summary.predicted;
            const double from = processorMs();
            makeEven({session.jobs.front(), session.setting, layers.front(), points.front().points},
                     way);
            const double evened = processorMs();
            std::vector<QuiltPlan> quilts{
                layQuilt(session, 0, way, 1, layers.front(), points.front())};
            const CrewPlan crew =
                planCrew(session, quilts, places, {.range = false, .bound = false});
            even += evened - from;
            full += processorMs() - evened;
            const double off = std::abs(double((said - crew.finish).count())) /
                               double(std::max<std::int64_t>(1, crew.finish.count()));
            ++near;
            most = std::max(most, off);
            sum += off;
        }
        std::printf("%-48s %4d  %13.1f %%  %12.1f %%  %6.1f %6.1f  %s\n", what, near, 100 * most,
                    100 * sum / std::max(1, near), even / std::max(1, near),
                    full / std::max(1, near), most <= kOff ? "" : "OFF");
        std::fflush(stdout);
        good = good && most <= kOff;
    }
    return good;
}

} // namespace bastewright
