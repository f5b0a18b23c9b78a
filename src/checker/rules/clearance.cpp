#include "checker/geometry/segments.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

namespace bastewright::check {
namespace {

/// True where the plan owns up to so many pins too near a seam.
bool declared(const QuiltView& v, int number) {
    const Finding* const said = v.tells(Finding::Kind::pinsNearSeams);
    return said != nullptr && said->figures == std::vector{number};
}

} // namespace

void pointsEdge(const QuiltView& v, Report& report) {
    const SeenWay& way = seenWay(v.job);
    const Length margin = way.keepsEdge ? v.job.basting.edge : Length{};
    const Rect inside = v.top.grown(-margin).grown(kFine);
    const Unit unit = v.plan.unit;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points) {
            const Segment lies = pinSegment(p, way.length(v.job.basting));
            if (!inside.contains(lies.from) || !inside.contains(lies.to))
                report.add(where(v, z, p), v.label() + ", zone " + z.id + ": the point at " +
                                               place(p.at, unit) + " does not lie " +
                                               figure(margin, unit) + " inside the top.");
        }
}

void pointsClearance(const QuiltView& v, Report& report) {
    if (!seenWay(v.job).clearOfSeams || !seamsAreSewn(v.job))
        return;
    const std::vector<Segment> seams = seamsOf(v.job.top);
    const Length clear = v.job.basting.clear;
    const Unit unit = v.plan.unit;
    std::vector<std::pair<Pointer, std::string>> near;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points) {
            const Segment pin = pinSegment(p, v.job.basting.pinLength);
            for (const Segment& seam : seams) {
                const Length apart = distanceWithin(pin, seam, clear);
                if (apart >= clear - kFine)
                    continue;
                near.emplace_back(
                    where(v, z, p),
                    v.label() + ", zone " + z.id + ": the pin at " + place(p.at, unit) + " lies " +
                        figure(apart, unit) + " from the seam " + place(seam.from, unit) + " to " +
                        place(seam.to, unit) + "; " + figure(clear, unit) + " is asked.");
                break;
            }
        }
    if (near.empty() || declared(v, static_cast<int>(near.size())))
        return;
    for (auto& [pin, text] : near)
        report.add(pin, std::move(text));
}

} // namespace bastewright::check
