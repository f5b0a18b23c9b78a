#pragma once

#include "planners/passes/layout.h"

#include <optional>

namespace bastewright {

/// Round the first area, strips laid one after another along a whole side of what is basted by
/// then, each cut along its length. The fewest passes over all orders of the sides, if fewer than
/// `most`.
std::optional<Layout> strips(const LayoutInput& in, std::size_t most);

} // namespace bastewright
