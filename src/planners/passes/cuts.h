#pragma once

#include "measures/geometry.h"

#include <cstddef>
#include <span>
#include <vector>

namespace bastewright {

/// A place where the boundary of a pass may run along one axis of the top.
struct Cut {
    Length at;
    std::size_t before = 0; ///< lines of points that lie before it
};

/// One axis of the top: where its points lie, and where it may be cut between them.
struct AxisLines {
    Length quilt;           ///< side of the top
    std::vector<Length> at; ///< distinct coordinates of the points, sorted; at least one
    std::vector<Cut> cuts;  ///< sorted; the first is 0, the last the quilt's side
    std::size_t last() const { return cuts.size() - 1; }
};

/// The cuts midway between neighbouring coordinates, on a seam of `seams` (sorted) where one runs
/// near the middle of the gap; at quarter inches where points lie so that there are too few such
/// gaps (free placing). Without points, lines a spacing apart stand for them.
AxisLines axisLines(std::vector<Length> coordinates, Length quilt, Length spacing,
                    std::span<const Length> seams);

/// The cut that a place lies behind: the last one at or before it.
std::size_t cutBefore(const AxisLines& lines, Length at);

} // namespace bastewright
