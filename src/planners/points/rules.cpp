#include "planners/points/rules.h"

#include "ways/way.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

/// All of the 1/8 in that the rule allows: places are exact, so that nothing is lost by rounding;
/// less what numbers need (25 nm).
constexpr double kTolerance = 1.0 / 8 - 1e-6;

/// True where the edge, seams aside, leaves a place that holds each corner of the top.
bool cornersInReach(const Rules& rules, double raster) {
    Rules plain = rules;
    plain.pin = rules.pin.withoutSeams();
    const Field& t = rules.top();
    for (const double x : {t.x0, t.x1})
        for (const double y : {t.y0, t.y1}) {
            const Spots near = plain.places(Field{x, y, x, y}.grown(rules.radius), raster);
            if (std::none_of(near.begin(), near.end(), [&](Spot s) {
                    return distanceSquared(s, {x, y}) < squared(0.99 * rules.radius);
                }))
                return false;
        }
    return true;
}

} // namespace

Rules rulesFor(const Job& job) {
    const Rect area = topRect(job.top);
    const Field top{0, 0, area.width().in(), area.length().in()};
    std::vector<Segment> seams;
    if (wayOf(job).point.clearOfSeams && seamsAreSewn(job))
        seams = seamsOf(job.top);
    Rules rules{PinRule{top, seams, job.basting}};
    rules.spacing = job.basting.spacing.in();
    rules.radius = rules.spacing * std::sqrt(0.5) + kTolerance;
    rules.gap = rules.spacing / 2;
    if (job.top.grid) {
        const Point first = job.top.grid->firstBlock(area);
        rules.anchor = {first.x.in(), first.y.in()};
    }
    rules.fine = job.unit == Unit::inch ? 0.125 : Length::nanometres(2'500'000).in();
    rules.step = rules.fine;
    // Coarse enough to be quick, fine enough for a top of few points.
    while (rules.step * 2 <= rules.spacing / 5.5 && 4 * squared(rules.step) <= top.area() / 2500)
        rules.step *= 2;
    // Stitches lie on the finest raster, all others are looked for on that of the searches.
    const double raster = wayOf(job).point.alongRow ? rules.fine : rules.step;
    while (rules.pin.edge() > 0 && !cornersInReach(rules, raster))
        rules.pin = rules.pin.withEdge(std::max(0.0, rules.pin.edge() - 0.125));
    return rules;
}

Spots Rules::places(const Field& field, double raster) const {
    Spots out;
    const auto first = [&](double from, double origin) {
        return std::ceil((from - origin) / raster - 1e-9);
    };
    for (double j = first(field.y0, anchor.y); anchor.y + j * raster <= field.y1 + 1e-9; ++j)
        for (double i = first(field.x0, anchor.x); anchor.x + i * raster <= field.x1 + 1e-9; ++i) {
            const Spot at{anchor.x + i * raster, anchor.y + j * raster};
            if (pin.angleAt(at))
                out.push_back(at);
        }
    return out;
}

double Rules::rasterFor(const Field& field, std::size_t coarsePlaces) const {
    const bool few = static_cast<double>(coarsePlaces) < 0.4 * field.area() / squared(step);
    return few && step > fine * 1.5 ? step / 2 : step;
}

Spots Rules::leastBreach(Spot of) const {
    const double raster = std::max(fine, step / 2);
    const double reach = radius * 0.97;
    Spots best;
    double most = -1e9;
    const auto consider = [&](Spot at, double value) {
        if (value > most + 1e-6) {
            most = value;
            best.clear();
        }
        if (value >= most - 1e-6)
            best.push_back(at);
    };
    const auto each = [&](auto&& visit) {
        for (double j = std::ceil((of.y - reach - anchor.y) / raster);
             anchor.y + j * raster <= of.y + reach; ++j)
            for (double i = std::ceil((of.x - reach - anchor.x) / raster);
                 anchor.x + i * raster <= of.x + reach; ++i) {
                const Spot at{anchor.x + i * raster, anchor.y + j * raster};
                if (top().contains(at) && distanceSquared(at, of) <= reach * reach)
                    visit(at);
            }
    };
    each([&](Spot at) {
        if (const auto room = pin.mostRoom(at); room.room >= 0)
            consider(at, room.room);
    });
    if (best.empty()) // an edge wider than the reach of a point, or a top smaller
                      // than a pin
        each([&](Spot at) { consider(at, std::max(pin.edgeRoom(at, 0), pin.edgeRoom(at, 90))); });
    if (best.empty())
        best.push_back(
            {std::clamp(of.x, top().x0, top().x1), std::clamp(of.y, top().y0, top().y1)});
    return best;
}

int Rules::angleAt(Spot at) const {
    if (const auto angle = pin.angleAt(at))
        return *angle;
    if (const auto room = pin.mostRoom(at); room.room >= 0)
        return room.angle;
    return pin.edgeRoom(at, 90) > pin.edgeRoom(at, 0) ? 90 : 0;
}

} // namespace bastewright::points
