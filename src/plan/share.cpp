#include "plan/share.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace bastewright {

int pointCount(const Zone& zone, const std::optional<Share>& share) {
    const auto all = static_cast<int>(zone.points.size());
    return share ? std::clamp(share->points, 0, all) : all;
}

std::vector<PlacedPoint> pointsOf(const Zone& zone, const std::optional<Share>& share) {
    if (!share)
        return zone.points;
    std::vector<std::size_t> order(zone.points.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const bool byX = share->side == Side::left || share->side == Side::right;
    const auto from = [&](std::size_t k) {
        const Point at = zone.points[k].at;
        return byX ? std::tuple{at.x, at.y, k} : std::tuple{at.y, at.x, k};
    };
    if (share->side == Side::left || share->side == Side::head)
        std::ranges::sort(order, std::less{}, from);
    else
        std::ranges::sort(order, std::greater{}, from);
    order.resize(static_cast<std::size_t>(pointCount(zone, share)));
    std::ranges::sort(order);
    std::vector<PlacedPoint> out;
    for (const std::size_t k : order)
        out.push_back(zone.points[k]);
    return out;
}

} // namespace bastewright
