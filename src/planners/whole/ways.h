#pragma once

#include "planners/crew/crew.h"
#include "planners/points/points.h"
#include "planners/whole/sharing.h"
#include "planners/whole/whole.h"

namespace bastewright {

/// The ways that were taken, each first among its quilt's choices, and who then does what.
struct ChosenWays {
    std::vector<Shared> shared;
    /// One for each of `shared`: surface, passes, zones and places; no zones where some quilt lies
    /// nowhere.
    std::vector<QuiltPlan> quilts;
    CrewPlan crew; ///< without tasks where some quilt lies nowhere
};

/// The ways of a quilt predicted to be near the quickest laid out in full with the crew
/// planner, the nearest with other fields too, and the earliest finish taken; a way that turns out
/// not to work is replaced by the next that does. Of several quilts only the first that works.
/// `outcome`: only how it ends is asked for, the finish without range and bound. What was laid out
/// has its real finish as `Alternative::predicted`; ways that were not are scaled by it, and none
/// is listed as quicker than the one that was taken.
ChosenWays chooseWays(const Session& session, std::vector<Shared> shared,
                      const std::vector<LayerSizes>& layers, const std::vector<PointsPlan>& points,
                      std::vector<LayoutMemory>& memories, std::stop_token stop,
                      bool outcome = false);

} // namespace bastewright
