#pragma once

#include "plan/plan.h"

#include <span>

namespace bastewright {

/// No crew plan of this quilt alone on its table, lying as it does, ends before this, whoever
/// stands where: quick to find, for leaving out ways that cannot be the quickest. Its zones need
/// not be cut yet. Walking, uneven shares, hours and irons are left out; who gets nowhere without
/// leaning is not.
Seconds leastFinish(const Session& session, std::size_t job, const QuiltPlan& quilt,
                    std::span<const PlacedPoint> points);

} // namespace bastewright
