#pragma once

#include "plan/plan.h"
#include "planners/surface/arrangement.h"

#include <span>

namespace bastewright {

/// A surface as the quilt lies on it, and the part of it where points can be placed.
struct Workable {
    Size table;               ///< of the surface, in the quilt's frame
    std::vector<Side> closed; ///< sides of the quilt at which nobody can stand
    /// The largest upright rectangle, in the table's own frame turned with the quilt, inside the
    /// rim and within reach of an open side everywhere; empty where there is none.
    Rect field;
    bool whole = true; ///< the field is all of the table inside its rim
};

/// The sides of the quilt at these sides of the surface as drawn (those that the room's walls close),
/// by how the quilt lies (see SurfacePlan).
std::vector<Side> closedSides(std::span<const Side> walls, bool quiltLengthAlongLength);

/// Where on a surface somebody with this reach can work. A place is workable when it is no farther
/// than the reach from an open side. On the floor everything is.
Workable workable(const Arrangement& surface, const Room& room, bool quiltLengthAlongLength,
                  Length reach);

/// The reach that at least half of the helpers have; the trade's 27 in where there is nobody.
Length commonReach(std::span<const Helper> helpers);

} // namespace bastewright
