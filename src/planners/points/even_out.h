#pragma once

#include "planners/points/layout.h"

#include <optional>
#include <stop_token>

namespace bastewright::points {

/// Fewer points on a small top without seams, by moving them continuously.
///
/// Small tops are begun from scattered points, one fewer each time. Each point goes to the middle
/// of the smallest circle round the places that are nearest to it, again and again (the step of
/// Lloyd, IEEE Transactions on Information Theory 28, 1982, for the greatest distance instead of
/// the mean); the greatest distance of a place from its point never grows by it. Places are rounded
/// to the raster's finest step at the end. Tops of many points are returned as they are.
Layout evenedOut(const Rules& rules, Layout start, int effort, std::stop_token stop);

} // namespace bastewright::points
