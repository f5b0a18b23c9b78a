#pragma once

#include "planners/points/points.h"

namespace bastewright {

/// What a set of points really does on a top, by brute force and with none of the planner's code.
struct Measured {
    double farthest =
        0; ///< greatest distance of a place of the top from its nearest point, to 1e-3 in
    double closest = 0; ///< least distance of two points
    double room = 0;    ///< least distance of a pin's whole length from a seam; large without seams
    double edge = 0;    ///< least distance of a pin's whole length from the edge of the top
};

/// `seams` are those that count. Inches.
Measured measured(const Job& job, const std::vector<Segment>& seams,
                  const std::vector<PlacedPoint>& points);

/// Least distance of a point's whole length, lying in this direction, from a seam (large without)
/// and from the edge of the top; negative beyond the edge.
double roomOf(const Job& job, const std::vector<Segment>& seams, const PlacedPoint& point);
double edgeRoomOf(const Job& job, const PlacedPoint& point);

/// The seams that pins of this job keep clear of.
std::vector<Segment> seamsToKeepClearOf(const Job& job);

} // namespace bastewright
