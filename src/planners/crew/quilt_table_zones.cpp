#include "plan/trade_times.h"
#include "planners/crew/quilt_table.h"
#include "planners/crew/slowest.h"
#include "planners/surface/helper_order.h"

#include <algorithm>

/// What a way to spread people over the sides costs, zone by zone.
namespace bastewright::crew {

/// What zones cost beyond shares, each worked from its place, and people in one another's way.
bool QuiltTable::weighZones(Arrangement& a) const {
    double zones = 0;
    int conflicts = 0;
    for (std::size_t k = 0; k < sharings_.size(); ++k) {
        if (points_[k].empty())
            continue;
        Letters letters;
        PassCrew crew = crewOf(a.homes, k, *sharings_[k], letters, {});
        if (crew.conflicts > 0)
            if (auto fewer = withoutOne(a.homes, k)) {
                crew = crewOf(*fewer, k, *sharings_[k], letters, {});
                a.fewer.emplace(k, *std::move(fewer));
                a.cost += kRoams;
            }
        a.overlaps += crew.overlaps;
        conflicts += crew.conflicts;
        zones += 2 * slowestOf(crew, k);
    }
    a.cost += kConflict * conflicts;
    if (hands_.size() <= kFew)
        a.cost += std::max(0.0, zones - a.shared);
    return conflicts == 0;
}

/// Where all but one work a pass in nobody's way: without whom it is through soonest.
std::optional<std::vector<Home>> QuiltTable::withoutOne(const std::vector<Home>& homes,
                                                        std::size_t pass) const {
    std::optional<std::vector<Home>> best;
    double least = 0;
    if (homes.size() < 2 || hands_.size() > kFew)
        return best;
    for (std::size_t k = 0; k < homes.size(); ++k) {
        auto others = homes;
        others.erase(others.begin() + static_cast<std::ptrdiff_t>(k));
        Letters letters;
        const PassCrew crew = crewOf(others, pass, *sharings_[pass], letters, {});
        if (const double here = slowestOf(crew, pass);
            crew.conflicts == 0 && (!best || here < least)) {
            best = std::move(others);
            least = here;
        }
    }
    return best;
}

/// One call at the zones of a pass.
double QuiltTable::slowestOf(const PassCrew& crew, std::size_t pass) const {
    const double each = groundOf(pass).secondsAPoint;
    std::vector<double> seconds(crew.posts.size(), 0);
    for (const OwnedZone& z : crew.zones)
        if (z.post >= 0 && !z.zone.points.empty()) {
            const auto post = static_cast<std::size_t>(z.post);
            const double points =
                double(z.zone.points.size()) + (kLeaningFactor - 1) * double(z.leaning);
            seconds[post] += each * points / soundPace(crew.posts[post].helper->pace) +
                             trade_times::kStepUpToZone;
        }
    return middleOfSlowest(seconds, spreadOfWork());
}

} // namespace bastewright::crew
