#include "bench/points/small_tops.h"

#include "planners/points/holes.h"
#include "property/points/made_tops.h"
#include "property/points/points_oracle.h"
#include "unit/points/solver.h"

#include <cmath>
#include <cstdio>

namespace bastewright {
namespace {

constexpr int kSeconds = 20;        ///< for one call of the solver
constexpr double kMostSeconds = 50; ///< for one top
constexpr Length kRaster = 1_in;

struct Reference {
    std::size_t points = 0; ///< of the last choice that holds the whole top; 0: none was found
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

/// The least of these places that hold the whole top: what a choice leaves bare is added until
/// there is nothing.
Reference leastOf(const Job& job, const std::vector<Point>& places) {
    const Rect top = topRect(job.top);
    const double reach = job.basting.spacing.in() / std::sqrt(2.0) + 0.125;
    CoverModel model;
    model.costs.assign(places.size(), 1);
    const auto add = [&](points::Spot w) {
        std::vector<int> by;
        for (std::size_t i = 0; i < places.size(); ++i)
            if (std::hypot(places[i].x.in() - w.x, places[i].y.in() - w.y) <= reach)
                by.push_back(static_cast<int>(i));
        model.rows.push_back(std::move(by));
    };
    for (double y = 0; y <= top.length().in(); y += 1)
        for (double x = 0; x <= top.width().in(); x += 1)
            add({x, y});
    Reference out;
    for (double seconds = 0; seconds < kMostSeconds;) {
        const auto answer = solved(model, kSeconds);
        if (!answer || answer->chosen.empty())
            return out;
        seconds += answer->seconds;
        points::Spots chosen;
        for (const int c : answer->chosen)
            chosen.push_back({places[std::size_t(c)].x.in(), places[std::size_t(c)].y.in()});
        const auto open = points::holes(chosen, {0, 0, top.width().in(), top.length().in()},
                                        reach + 2 * points::kCoverSlack);
        if (open.empty())
            return {chosen.size(), answer->proven};
        for (const points::Spot w : open)
            add(w);
    }
    return out;
}

std::vector<Point> planned(const Job& job, Basting::Layout layout) {
    std::vector<Point> out;
    for (const PlacedPoint& p : planPoints(job, {.layout = layout}).points)
        out.push_back(p.at);
    return out;
}

void compare(Seams seams, Length side, Length border) {
    const Job job = madeTop(seams, side, side, border);
    const std::vector<Point> rows = planned(job, Basting::Layout::rows),
                             free = planned(job, Basting::Layout::fewest);
    std::vector<Point> places = allowed(job);
    // With these no choice has to be dearer than either.
    places.insert(places.end(), rows.begin(), rows.end());
    places.insert(places.end(), free.begin(), free.end());
    const Reference least = leastOf(job, places);
    std::printf("%-28s %2.0f in  %-6s  %4zu  %4zu  ", name(seams), side.in(),
                border > Length{} ? "yes" : "none", rows.size(), free.size());
    if (least.points == 0)
        std::puts("CBC found nothing in its time");
    else
        std::printf("%4zu  rows %.3f, free %.3f of it%s\n", least.points,
                    double(rows.size()) / double(least.points),
                    double(free.size()) / double(least.points),
                    least.proven ? "" : "; not proven the least");
    std::fflush(stdout);
}

} // namespace

int smallTops() {
    if (!cbcAvailable()) {
        std::puts(
            "SKIPPED: COIN-OR CBC is not installed, so that there is nothing to compare with");
        return 0;
    }
    std::puts("small tops                          border  rows  free  least by CBC");
    for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                              Seams::triangles6, Seams::triangles4}) {
        compare(seams, 16_in, 2_in);
        if (seams != Seams::none && seams != Seams::sashing)
            compare(seams, 12_in, 0_in);
    }
    return 0;
}

} // namespace bastewright
