#pragma once

#include "planners/points/repeat_frame.h"
#include "plan/plan.h"

namespace bastewright::points {

/// The patterns of a layout for people: each kind of block, inside, along each side and in each
/// corner with its border, from the head-left corner of its own tile.
///
/// Read off the finished points, block by block, so that every point is in exactly one tile and
/// times × points add up to the points on the top. Blocks that differ from the others of their kind
/// are patterns of their own.
std::vector<PointPattern> patternList(const Job& job, const RepeatFrame& frame,
                                      const std::vector<PlacedPoint>& points);

} // namespace bastewright::points
