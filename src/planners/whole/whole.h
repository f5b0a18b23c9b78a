#pragma once

#include "plan/plan.h"
#include "planners/points/points_memory.h"

#include <stop_token>

namespace bastewright {

struct WholeOptions {
    /// Search effort, in iterations rather than time, so that the same input gives the same plan.
    int effort = 1;
    /// Re-plan with one more table, helper and so on to rank what would help most.
    bool help = false;
    /// Makes later plans quicker, never different; outlives the planning. May be shared by threads.
    PointsMemory* memory = nullptr;
};

/// Plans a whole session: every quilt's surface, passes, zones, points, layers, rolls; everybody's
/// tasks; what to bring. Never throws on a session that readSession accepted: what cannot be
/// planned is a finding of level stop with the smallest cure, and the plan holds what could be.
///
/// Pure: same session and options, same plan byte for byte, on any thread. `stop` ends the search
/// early with the best plan so far.
Plan planWhole(const Session& session, const WholeOptions& options = {}, std::stop_token stop = {});

} // namespace bastewright
