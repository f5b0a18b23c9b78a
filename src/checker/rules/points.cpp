#include "checker/geometry/distance.h"
#include "checker/geometry/uncovered.h"
#include "checker/rules/cover_radius.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace bastewright::check {
namespace {

std::size_t count(const QuiltPlan& q) {
    std::size_t n = 0;
    for (const Zone& z : q.zones)
        n += z.points.size();
    return n;
}

/// Kershner (1939): no cover of the plane by discs of radius r is thinner than one disc for every
/// r²·3√3/2 of area.
double kershner(double squareInches, double radius) {
    return squareInches / (radius * radius * 1.5 * std::numbers::sqrt3);
}

/// True where the others do not cover the top without this point.
bool isNeeded(const QuiltView& v, std::vector<Point> all, Point point) {
    all.erase(std::ranges::find(all, point));
    return !uncovered(v.top, all, coverRadius(v.job.basting) + kFine, 1).empty();
}

} // namespace

void pointsAngle(const QuiltView& v, Report& report) {
    const SeenWay& way = seenWay(v.job);
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points)
            if (p.angle < 0 || p.angle >= 180 || p.angle % way.turn != 0)
                report.add(where(v, z, p) / "angle",
                           v.label() + ", zone " + z.id + ": the point at " +
                               place(p.at, v.plan.unit) + " has the direction " +
                               std::to_string(p.angle) + "; " + way.angles);
}

// Where seams are dense, points nearer to each other may be the only way; the plan then says so,
// and neither of the two may be one that can be left out.
void pointsApart(const QuiltView& v, Report& report) {
    struct Laid {
        Point at;
        const Zone* zone;
        const PlacedPoint* point;
    };
    std::vector<Laid> all;
    std::vector<Point> places;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points) {
            all.push_back({p.at, &z, &p});
            places.push_back(p.at);
        }
    std::ranges::sort(all, {}, &Laid::at);
    const Length least = v.job.basting.spacing / 2;
    const bool said = v.tells(Finding::Kind::pinsCrowded) != nullptr;
    for (auto a = all.begin(); a != all.end(); ++a)
        for (auto b = std::next(a); b != all.end() && b->at.x - a->at.x < least; ++b) {
            const Length apart = distance(a->at, b->at);
            if (apart >= least - kFine ||
                (said && isNeeded(v, places, a->at) && isNeeded(v, places, b->at)))
                continue;
            report.add(where(v, *b->zone, *b->point),
                       v.label() + ": the points at " + place(a->at, v.plan.unit) + " and " +
                           place(b->at, v.plan.unit) + " are " + figure(apart, v.plan.unit) +
                           " apart; half the spacing, " + figure(least, v.plan.unit) +
                           ", is the least" + (said ? ", and one of them can be left out." : "."));
        }
}

// What lies in an area is basted with it; its points are listed from the head to the foot.
void pointsZone(const QuiltView& v, Report& report) {
    for (const Zone& z : v.quilt.zones) {
        if (!std::ranges::is_sorted(z.points, {}, [](const PlacedPoint& p) {
                return std::pair{p.at.y, p.at.x};
            }))
            report.add(where(v, z) / "points",
                       v.label() + ": the points of zone " + z.id + " are out of order.");
        for (const PlacedPoint& p : z.points)
            if (!z.area.contains(p.at))
                report.add(where(v, z, p), v.label() + ": the point at " +
                                               place(p.at, v.plan.unit) + " is in zone " + z.id +
                                               ", but lies outside its area " +
                                               box(z.area, v.plan.unit) + ".");
    }
}

// So far every point may be off: by brute force the top is covered with that much less reach.
void pointsSlack(const QuiltView& v, Report& report) {
    if (!v.quilt.rows || v.quilt.zones.empty())
        return;
    const Length slack = v.quilt.rows->slack, step = Length::inch64ths(1);
    if (slack < Length{} || slack >= coverRadius(v.job.basting) || slack.nm() % step.nm() != 0) {
        report.add(where(v) / "rows/slack",
                   v.label() + ": points may be off by " + figure(slack, v.plan.unit) +
                       ", it says; that is no number of 64ths of an inch a point may be off by.");
        return;
    }
    std::vector<Point> all;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points)
            all.push_back(p.at);
    const Length reach = coverRadius(v.job.basting) - slack;
    // A step more leaves a place open; nobody is told of more than an inch.
    if (slack < Length::inches(1) && uncovered(v.top, all, reach - step - kFine, 1).empty())
        report.add(where(v) / "rows/slack", v.label() + ": points may be off by more than " +
                                                figure(slack, v.plan.unit) + ".");
    if (slack == Length{})
        return;
    for (const Uncovered& open : uncovered(v.top, all, reach + kFine, 1))
        report.add(where(v) / "rows/slack", v.label() + ": points may be off by " +
                                                figure(v.quilt.rows->slack, v.plan.unit) +
                                                ", it says; then the place at " +
                                                place(open.at, v.plan.unit) + " is out of reach.");
}

void pointsBound(const QuiltView& v, Report& report) {
    if (v.stopped() && v.quilt.bounds.points == 0)
        return;
    const double radius = v.job.basting.spacing.in() / std::numbers::sqrt2;
    const double least = kershner(areaSquareInches(v.top), radius);
    const double grown = kershner(areaSquareInches(v.top), radius + kPlacing.in());
    const auto up = [](double x) { return static_cast<int>(std::ceil(x - 1e-6)); };
    if (std::abs(v.quilt.bounds.points - up(least)) > 0)
        report.add(where(v) / "bounds/points", v.label() + ": the bound says at least " +
                                                   std::to_string(v.quilt.bounds.points) +
                                                   " points; Kershner's covering gives " +
                                                   std::to_string(up(least)) + ".");
    if (std::ssize(v.quilt.zones) > 0 && static_cast<int>(count(v.quilt)) < up(grown))
        report.add(where(v) / "zones",
                   v.label() + ": " + std::to_string(count(v.quilt)) +
                       " points cannot cover the top; Kershner's covering needs " +
                       std::to_string(up(grown)) + ".");
}

} // namespace bastewright::check
