#pragma once

#include "planners/whole/way_trials.h"

namespace bastewright {

/// So many ways one after another that do not come nearer to working are enough.
inline constexpr std::size_t kMostInVain = 3;

/// Where the best way does not work, for the farthest of all sits, keeps to a side or leaves early:
/// ways for those who get less far, until one works.
void tryLessReach(WayTrials& trials, std::size_t quilt);

/// The ways of the only quilt that are nearest to the quickest with other fields, which people may
/// share better: for those who get less far, otherwise cut or otherwise put on the table, and as a
/// smaller table would have them.
void tryOtherFields(WayTrials& trials);

} // namespace bastewright
