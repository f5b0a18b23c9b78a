#pragma once

#include "plan/layers.h"

#include <string>
#include <vector>

/// Where every pin or dot goes. In the quilt's own frame.
namespace bastewright {

/// A pin (its centre and the direction it lies in) or a fuse dot (direction zero).
struct PlacedPoint {
    Point at;
    int angle = 0; ///< degrees from the x axis towards the foot, 0 <= angle < 180
    auto operator<=>(const PlacedPoint&) const = default;
};

/// The unit that is handed out and ticked off.
///
/// Points within one spacing of an area that is basted in a later pass belong to that later pass
/// (the row beside an open boundary), so a zone's points may lie up to one spacing outside its
/// area, on the side of an earlier pass; everywhere else they lie in it.
struct Zone {
    std::string id; ///< letters across, numbers down: "C4"
    int pass = 1;
    Rect area; ///< the areas partition the top
    std::vector<PlacedPoint> points;
    auto operator<=>(const Zone&) const = default;
};

} // namespace bastewright
