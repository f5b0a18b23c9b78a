#include "bench/points/small_tops.h"

#include "planners/points/holes.h"
#include "property/points/made_tops.h"
#include "property/points/points_oracle.h"
#include "unit/points/solver.h"

#include <cmath>
#include <cstdio>

namespace bastewright {
namespace {

constexpr int kSeconds = 30; ///< for one call of the solver
constexpr Length kRaster = 1_in;

struct Reference {
    std::size_t points = 0;
    bool proven = false;
};

/// Places of the raster where a pin may lie in some direction.
std::vector<Point> allowed(const Job& job) {
    const std::vector<Segment> seams = seamsToKeepClearOf(job);
    const Rect top = topRect(job.top);
    std::vector<Point> out;
    for (Length y; y <= top.y1; y += kRaster)
        for (Length x; x <= top.x1; x += kRaster)
            for (const int angle : {0, 90, 45, 135, 30, 60, 120, 150}) {
                const PlacedPoint p{{x, y}, angle};
                if (edgeRoomOf(job, p) >= job.basting.edge.in() - 1e-6 &&
                    roomOf(job, seams, p) >= job.basting.clear.in() - 1e-6) {
                    out.push_back({x, y});
                    break;
                }
            }
    return out;
}

/// The least places of the raster that hold the whole top: places that a choice leaves bare are
/// added until there are none.
Reference leastOnRaster(const Job& job) {
    const std::vector<Point> places = allowed(job);
    const Rect top = topRect(job.top);
    const double reach = job.basting.spacing.in() / std::sqrt(2.0) + 0.125;
    points::Spots witnesses;
    for (double y = 0; y <= top.length().in(); y += 1)
        for (double x = 0; x <= top.width().in(); x += 1)
            witnesses.push_back({x, y});
    CoverModel model;
    model.costs.assign(places.size(), 1);
    const auto add = [&](points::Spot w) {
        std::vector<int> by;
        for (std::size_t i = 0; i < places.size(); ++i)
            if (std::hypot(places[i].x.in() - w.x, places[i].y.in() - w.y) <= reach)
                by.push_back(static_cast<int>(i));
        model.rows.push_back(std::move(by));
    };
    for (const points::Spot w : witnesses)
        add(w);
    for (int round = 0; round < 40; ++round) {
        const auto answer = solved(model, kSeconds);
        if (!answer)
            return {};
        points::Spots chosen;
        for (const int c : answer->chosen)
            chosen.push_back({places[std::size_t(c)].x.in(), places[std::size_t(c)].y.in()});
        const auto open = points::holes(chosen, {0, 0, top.width().in(), top.length().in()},
                                        reach + 2 * points::kCoverSlack);
        if (open.empty() || !answer->proven)
            return {chosen.size(), answer->proven && open.empty()};
        for (const points::Spot w : open)
            add(w);
    }
    return {};
}

std::size_t planned(const Job& job, Basting::Layout layout) {
    return planPoints(job, {.layout = layout}).points.size();
}

} // namespace

int smallTops() {
    if (!cbcAvailable()) {
        std::puts("CBC is not installed: nothing to compare with");
        return 0;
    }
    std::puts("small tops                       rows  free  least on a raster of 1 in (CBC)");
    for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                              Seams::triangles6, Seams::triangles4}) {
        const Length side = seams == Seams::sashing ? 18_in : 16_in;
        const Job job = madeTop(seams, side, side, 2_in);
        const std::size_t rows = planned(job, Basting::Layout::rows),
                          free = planned(job, Basting::Layout::fewest);
        const Reference least = leastOnRaster(job);
        std::printf("%-28s %2.0f in  %4zu  %4zu  ", name(seams), side.in(), rows, free);
        if (least.proven)
            std::printf("%4zu  rows %.3f, free %.3f of it\n", least.points,
                        double(rows) / double(least.points), double(free) / double(least.points));
        else
            std::puts("not proven in time");
        std::fflush(stdout);
    }
    return 0;
}

} // namespace bastewright
