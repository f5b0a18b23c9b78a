#pragma once

#include "plan/plan.h"

#include <span>

namespace bastewright::crew {

/// Where an area may be cut across one axis: the ends of the area, and between them lines with
/// points on both sides, ascending. `alongX`: lines at an x.
///
/// Where points stand in rows, lines lie between rows, or between marks at half steps, so that what
/// is on one side can be said by rows and marks (`zoneRowsWords`). A pin that lies beside its mark
/// moves the line a little; one that lies beyond the next row or mark is cut off. Where points
/// stand freely there are about as many lines, each in the widest gap near.
std::vector<Length> cutLines(Interval area, std::span<const PlacedPoint> points, bool alongX,
                             Length spacing, const PinRows* rows);

} // namespace bastewright::crew
