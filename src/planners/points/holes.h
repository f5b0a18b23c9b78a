#pragma once

#include "planners/points/spot.h"

#include <span>

namespace bastewright::points {

/// What counts as covered: a place nearer to a point than the radius by this
/// much (inches).
inline constexpr double kCoverSlack = 1e-6;

/// Places of `field` that no point covers, one or more in every hole; empty
/// exactly where the whole field is within `radius` of a point (to the slack
/// above).
///
/// Continuous, not sampled: an uncovered region is bounded by arcs of the discs
/// round the points, so one of the corners of that arrangement (two circles, a
/// circle and a side of the field, a corner of the field) lies outside every
/// other disc. Points outside the field count.
Spots holes(std::span<const Spot> points, const Field& field, double radius);

/// True where there are none.
bool covered(std::span<const Spot> points, const Field& field, double radius);

/// Greatest distance of any place of the field from its nearest point, to 1e-5
/// in.
double coveringRadius(std::span<const Spot> points, const Field& field);

} // namespace bastewright::points
