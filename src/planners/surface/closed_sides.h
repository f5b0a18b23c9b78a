#pragma once

#include "plan/plan.h"

#include <span>
#include <vector>

namespace bastewright {

/// The sides of the quilt at these sides of the surface as drawn (those that the room's walls
/// close), by how the quilt lies (see SurfacePlan).
std::vector<Side> closedSides(std::span<const Side> walls, bool quiltLengthAlongLength);

/// The other sides.
std::vector<Side> openSides(const std::vector<Side>& closed);

} // namespace bastewright
