#pragma once

#include "planners/passes/passes.h"

namespace bastewright {

/// How long a choice takes with everybody at work, from the trade's times: laying, clamping,
/// smoothing, checking, shifting, and the points shared among those who get to them, as many as
/// find room along the open sides. It ranks choices; the crew planner then gives the real times.
/// `passes` are those of the choice.
Seconds predictedTime(const PassRequest& request, const PassChoice& choice,
                      std::span<const Pass> passes);

/// What a pass takes wherever the table lies in it: its points, and moving the quilt.
StepCost costWith(const PassRequest& request, const PassChoice& choice);

/// People needed to slide the quilt: by weight (revised NIOSH lifting equation), and two where it
/// is wider than a pair of arms (60 in; common practice).
int liftersFor(const PassRequest& request);

} // namespace bastewright
