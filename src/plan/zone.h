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

/// The unit that is handed out and ticked off. Its points lie in its area.
struct Zone {
    std::string id; ///< letters across, numbers down: "C4"
    int pass = 1;
    Rect area; ///< the areas partition the top
    std::vector<PlacedPoint> points;
    auto operator<=>(const Zone&) const = default;
};

} // namespace bastewright
