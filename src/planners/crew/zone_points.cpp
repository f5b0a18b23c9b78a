#include "planners/crew/zone_points.h"

namespace bastewright {

std::vector<PlacedPoint> pointsOfZones(const QuiltPlan& quilt) {
    std::vector<PlacedPoint> out;
    for (const Zone& z : quilt.zones)
        out.insert(out.end(), z.points.begin(), z.points.end());
    return out;
}

std::vector<std::vector<PlacedPoint>> pointsOfZones(const std::vector<QuiltPlan>& quilts) {
    std::vector<std::vector<PlacedPoint>> out;
    for (const QuiltPlan& q : quilts)
        out.push_back(pointsOfZones(q));
    return out;
}

} // namespace bastewright
