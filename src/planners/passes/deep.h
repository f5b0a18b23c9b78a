#pragma once

#include "planners/passes/board.h"

#include <vector>

namespace bastewright {

/// A table as it is used along one axis: all of it, or the strip within reach of its low or of its
/// high edge.
struct AxisUse {
    AxisTable toLow, toHigh; ///< on the way to either end of the top
    Length offLow, offHigh;  ///< from the table's edge to the part's
};

AxisUse allOf(const AxisTable& table);

/// The strips of a table whose middle is out of reach along this axis. On the way to the high end
/// of the top the strip at the table's high edge is used, with what is basted beside it on the rest
/// of the table; towards the low end that at the low edge.
AxisUse stripsOf(const AxisTable& table, Length reach);

/// What of a table is out of reach and too wide to be pulled across, in the table's own frame;
/// empty where the table can be used whole.
Rect tooDeep(const Lie& lie);

/// How a table is used along x and along y: whole, or where it is too deep along one of its sides.
struct Uses {
    AxisUse x, y;
};
std::vector<Uses> usesOf(const Lie& lie);

} // namespace bastewright
