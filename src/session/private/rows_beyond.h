#pragma once

#include "plan/plan.h"

#include <span>
#include <vector>

namespace bastewright {

/// The points of what is left when its rows are planned anew while some passes are basted: the new
/// rows beyond the basted area, and along it so many of the old ones as it takes that no place is
/// farther from a point than either spacing allows. `before` and `after` are the job with the old
/// and the new spacing, `old` and `fresh` all points of either over the whole top. Points along the
/// basted area are left out one by one as long as every place stays covered.
std::vector<PlacedPoint> rowsBeyond(const Job& before, const Job& after,
                                    std::span<const PlacedPoint> old,
                                    std::span<const PlacedPoint> fresh,
                                    std::span<const Pass> basted);

} // namespace bastewright
