#pragma once

#include "planners/points/layout.h"

#include <optional>
#include <stop_token>

namespace bastewright::points {

/// Fewer points on a top without seams, by moving them continuously.
///
/// Each point goes to the middle of the smallest circle round the places that are nearest to it,
/// again and again (the step of Lloyd, IEEE Transactions on Information Theory 28, 1982, for the
/// greatest distance instead of the mean); the greatest distance of a place from its point never
/// grows by it. One point after the other is taken away and the others around it are evened out;
/// small tops are also tried from scattered beginnings. Places are rounded to the raster's finest
/// step at the end.
Layout evenedOut(const Rules& rules, Layout start, int effort, std::stop_token stop);

/// Middle of the smallest circle round some places (Welzl, 1991); there must be at least one.
Spot middleOfSmallestCircle(const Spots& places);

} // namespace bastewright::points
