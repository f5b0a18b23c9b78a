#pragma once

#include "measures/geometry.h"

namespace bastewright::check {

/// A place in inches.
struct Spot {
    double x, y;
};

inline Spot spot(Point p) {
    return {p.x.in(), p.y.in()};
}

} // namespace bastewright::check
