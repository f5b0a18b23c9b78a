#pragma once

#include "planners/passes/layout.h"

#include <optional>

namespace bastewright {

/// Four arms round a middle of at least 12 in: head, right, foot, left. Each ends at the side of
/// the next, so that only the last has basted area at its end; an arm may be cut into steps. The
/// middle is the quilt's for a centred start, else anywhere such that the quilt's middle lies
/// inside the first field. The fewest passes of all such, if fewer than `most`; the other way round
/// comes from exchanging the axes.
std::optional<Layout> pinwheel(const LayoutInput& in, std::size_t most);

} // namespace bastewright
