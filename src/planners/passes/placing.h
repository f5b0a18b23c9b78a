#pragma once

#include "planners/passes/layout.h"

namespace bastewright {

/// What each axis needs to know about the table.
AxisRoom roomX(const LayoutInput& in);
AxisRoom roomY(const LayoutInput& in);

/// An area with the usable field's corner at a place; it needs nothing yet.
FreshArea placed(const LayoutInput& in, const Rect& fresh, Point fieldAt);

/// Where the field starts, along one axis, for run i: centred on the first run, with the outer edge
/// of the run at the outer edge of the field elsewhere, so that new area is near a side to stand
/// at.
Length fieldStart(const AxisCuts& cuts, std::size_t i, Length field);

/// Whether two areas that do not overlap share a stretch of edge.
bool touch(const Rect& a, const Rect& b);

/// The same input with x and y exchanged, and a layout of it exchanged back.
LayoutInput exchanged(const LayoutInput& in);
Layout exchanged(Layout layout, Shape shape);

} // namespace bastewright
