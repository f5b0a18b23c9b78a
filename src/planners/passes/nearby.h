#pragma once

#include "planners/passes/layout.h"

namespace bastewright {

/// Sequences that differ from one by little: its passes in another order, the table elsewhere in
/// one pass or in all of them, a boundary moved by a line or two. As many passes at most; all of
/// them work. `cost` places the table where nothing else does.
std::vector<Sequence> nearby(const LayoutInput& in, const Sequence& sequence, const StepCost& cost);

} // namespace bastewright
