#pragma once

#include "planners/passes/cover_needs.h"

#include <functional>

namespace bastewright {

/// Gives `take` sets of `count` windows, or fewer, that cover all needs, each of them once, as they
/// are found in so many steps, until it says false or with a stop. Else what is found depends on
/// nothing but the arguments.
///
/// Row weighting local search for set cover (Gao, Weise and Li, EJOR 246, 2015): a window goes that
/// is missed least, one comes that covers most of what has long been left out. It finds sets of
/// more windows than an exact search can look through, and proves nothing.
void coversByWeighing(const CoverNeeds& needs, std::size_t count, const CoverSearch& limits,
                      const std::function<bool(const std::vector<Window>&)>& take);

} // namespace bastewright
