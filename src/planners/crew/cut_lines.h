#pragma once

#include "plan/plan.h"

#include <span>

namespace bastewright::crew {

/// Where an area may be cut across one axis so that no point is cut: the ends of the area, and
/// between them the middles of the gaps between neighbouring rows (or marks), ascending. Where
/// points stand in rows these lie midway between rows, or marks at half steps; where they stand
/// freely there are about as many, each in the widest gap near. `alongX`: lines at an x.
std::vector<Length> cutLines(Interval area, std::span<const PlacedPoint> points, bool alongX,
                             Length spacing);

} // namespace bastewright::crew
