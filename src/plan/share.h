#pragma once

#include "plan/task.h"
#include "plan/zone.h"

namespace bastewright {

/// The points of a zone that a task is for, in the zone's order: all of them, or the task's share,
/// counted from its side of the zone. Points equally far from the left or right side count from
/// the head on (for the right: from the foot), those equally far from the head or foot from the
/// left on (for the foot: from the right); so two shares from opposite sides never meet in a point
/// while their sum is the zone's.
std::vector<PlacedPoint> pointsOf(const Zone& zone, const std::optional<Share>& share);

/// The side that lies across from another.
constexpr Side opposite(Side side) {
    switch (side) {
    case Side::head:
        return Side::foot;
    case Side::foot:
        return Side::head;
    case Side::left:
        return Side::right;
    case Side::right:
        break;
    }
    return Side::left;
}

/// How many those are.
int pointCount(const Zone& zone, const std::optional<Share>& share);

} // namespace bastewright
