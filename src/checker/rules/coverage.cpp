#include "checker/geometry/uncovered.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <numbers>

namespace bastewright::check {

void pointsCoverage(const QuiltView& v, Report& report) {
    std::vector<Point> centres;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points)
            centres.push_back(p.at);
    // A square grid of the spacing leaves no place farther than this from a point.
    const Length radius =
        Length::nearestInches(v.job.basting.spacing.in() / std::numbers::sqrt2) + kPlacing;
    const Unit unit = v.plan.unit;
    for (const Uncovered& hole : uncovered(v.top, centres, radius + kFine, Report::kShown + 1))
        report.add(v.label() + ": at " + place(hole.at, unit) + " the nearest point is " +
                   figure(hole.nearest, unit) + " or more away; " + figure(radius, unit) +
                   " is accepted.");
}

} // namespace bastewright::check
