#include "checker/geometry/uncovered.h"
#include "checker/rules/cover_radius.h"
#include "checker/rules/rules.h"

namespace bastewright::check {

void pointsCoverage(const QuiltView& v, Report& report) {
    std::vector<Point> centres;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points)
            centres.push_back(p.at);
    const Length radius = coverRadius(v.job.basting);
    const Unit unit = v.plan.unit;
    for (const Uncovered& hole : uncovered(v.top, centres, radius + kFine, Report::kShown + 1))
        report.add(where(v) / "zones", v.label() + ": at " + place(hole.at, unit) +
                                           " the nearest point is " + figure(hole.nearest, unit) +
                                           " or more away; " + figure(radius, unit) +
                                           " is accepted.");
}

} // namespace bastewright::check
