#pragma once

#include "plan/plan.h"

namespace bastewright::check {

/// Where a pin lies: its whole length, about its centre.
Segment pinSegment(const PlacedPoint& pin, Length length);

/// Distance between two segments, zero where they touch or cross. Where it is plainly more than
/// `enough`, some length of at least `enough` is given instead.
Length distanceWithin(const Segment& a, const Segment& b, Length enough);

} // namespace bastewright::check
