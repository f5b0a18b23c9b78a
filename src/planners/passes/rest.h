#pragma once

#include "planners/passes/passes.h"

#include <optional>
#include <span>
#include <vector>

namespace bastewright {

/// How to go on with a quilt of which some passes are done, from these tables: of all surfaces and
/// both ways to lie the one with the fewest passes, then the least predicted time. Every pass keeps
/// its anchor on what is basted, whichever tables that was done on. `request.points` are all points
/// of the quilt, `done` the passes that stay as they are. Nothing where no table serves. The
/// sequence of the choice has the new passes only, as steps and cells without their windows;
/// `start` is told by the plan so far.
std::optional<PassChoice> choiceForRest(const PassRequest& request,
                                        std::span<const Arrangement> surfaces,
                                        std::span<const Pass> done, Basting::Start start);

/// From the nearest open side to the deepest of these points in the passes of a quilt; zero on the
/// floor.
Length deepestPlace(const QuiltPlan& quilt, std::span<const PlacedPoint> points);

} // namespace bastewright
