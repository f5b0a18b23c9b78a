#pragma once

#include "measures/geometry.h"

namespace bastewright::check {

/// The extent of a side of the table: x for head and foot, y for left and right.
Interval extent(const Rect& table, Side side);

/// How much of a side one person takes: 24 in, or the whole side where it is shorter (common
/// practice: one pinner per 24 to 30 in of edge).
Length standingWidth(const Rect& table, Side side);

/// Inches from a standing place to the farthest corner of a box: what that person must reach.
double reachNeeded(const Rect& table, Side side, Interval along, const Rect& box);

/// The same from the best place on the side.
double leastReachNeeded(const Rect& table, Side side, const Rect& box);

} // namespace bastewright::check
