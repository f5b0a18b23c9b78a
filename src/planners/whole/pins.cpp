#include "planners/whole/pins.h"

#include <cmath>

namespace bastewright {

std::int64_t pinsTaken(const Session& session, const std::vector<QuiltPlan>& quilts) {
    std::int64_t out = 0;
    for (std::size_t i = 0; i < quilts.size(); ++i) {
        if (session.jobs[i].basting.with != Basting::With::pins)
            continue;
        for (const Zone& z : quilts[i].zones)
            out += static_cast<std::int64_t>(z.points.size());
    }
    return out;
}

Length spacingFor(Length spacing, std::int64_t taken, std::int64_t have) {
    const double factor = std::sqrt(double(taken) / double(have));
    return Length::nearestInches(std::ceil(spacing.in() * factor * 8) / 8);
}

} // namespace bastewright
