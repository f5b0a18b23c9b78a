#pragma once

#include "session/live_state.h"

#include <map>
#include <utility>

namespace bastewright {

using Sizes = std::map<std::pair<Length, Length>, int>; ///< shorter, longer side: how many

std::pair<Length, Length> sizeOf(Length a, Length b);
Sizes tablesOf(const SurfacePlan& surface);

/// What a surface takes for quilts that follow one another: its tables may be pushed together anew
/// for each.
void atLeast(Sizes& all, const Sizes& some);

/// Nothing of the quilt will lie on its tables any more: its last pass is released, or it has none.
bool isOffTheTables(const Plan& plan, const LiveState& state, int job);

/// By surface what the quilts take that lie on it or are still to lie on it.
std::map<int, Sizes> tablesTaken(const Plan& plan, const LiveState& state);

} // namespace bastewright
