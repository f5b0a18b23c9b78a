#pragma once

#include "measures/geometry.h"

namespace bastewright::check {

/// The side of the quilt that lies at a side of the surface as drawn with its length left to right.
constexpr Side quiltSide(Side drawn, bool quiltLengthAlongLength) {
    if (!quiltLengthAlongLength)
        return drawn;
    switch (drawn) { // the quilt's head points to the left
    case Side::left:
        return Side::head;
    case Side::foot:
        return Side::left;
    case Side::right:
        return Side::foot;
    case Side::head:
        return Side::right;
    }
    return drawn;
}

} // namespace bastewright::check
