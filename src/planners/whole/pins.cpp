#include "planners/whole/pins.h"

#include "ways/supplies.h"

#include <cmath>

namespace bastewright {

std::int64_t pinsTaken(const Session& session, const std::vector<QuiltPlan>& quilts) {
    std::int64_t out = 0;
    for (std::size_t i = 0; i < quilts.size(); ++i) {
        if (wayOf(session.jobs[i]).fromBox)
            out += pointsOf(quilts[i]);
    }
    return out;
}

Length spacingFor(Length spacing, std::int64_t taken, std::int64_t have) {
    const double factor = std::sqrt(double(taken) / double(have));
    return Length::nearestInches(std::ceil(spacing.in() * factor * 8) / 8);
}

} // namespace bastewright
