#pragma once

#include "planners/passes/cover_needs.h"

namespace bastewright {

/// Sets of `count` windows, or fewer, that cover all needs, sorted, looked for in so many steps;
/// ends when `enough` were found, or with a stop. Else what is found depends on nothing but the
/// arguments.
///
/// Row weighting local search for set cover (Gao, Weise and Li, EJOR 246, 2015): a window goes that
/// is missed least, one comes that covers most of what has long been left out. It finds sets of
/// more windows than an exact search can look through, and proves nothing.
std::vector<std::vector<Window>> coversByWeighing(const CoverNeeds& needs, std::size_t count,
                                                  const CoverSearch& limits);

} // namespace bastewright
