#pragma once

#include "planners/passes/passes.h"
#include "planners/points/points.h"

#include <vector>

namespace bastewright {

/// Which quilt is done how, and on which of several surfaces.
struct Shared {
    std::size_t job = 0;
    int surface = 1;                 ///< from 1; quilts with the same number follow one another
    std::vector<PassChoice> choices; ///< best first; empty or not workable where nothing fits
};

/// Shares the room among the quilts of a session: tries one surface, two, … made of equal shares of
/// the tables, gives each quilt in turn to the surface that is free first, and keeps the number of
/// surfaces that finishes first by the predicted times with the helpers shared out as evenly.
/// `points` holds the points of each job, `memories` the layouts found for it so far.
std::vector<Shared> shareRoom(const Session& session, const std::vector<LayerSizes>& layers,
                              const std::vector<PointsPlan>& points,
                              std::vector<LayoutMemory>& memories, std::stop_token stop = {});

} // namespace bastewright
