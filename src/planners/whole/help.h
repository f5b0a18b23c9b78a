#pragma once

#include "planners/passes/layout_memory.h"
#include "planners/points/points.h"
#include "planners/whole/whole.h"

namespace bastewright {

/// The points of every job of a session; they do not depend on the room or the people.
std::vector<PointsPlan> planAllPoints(const Session& session, const WholeOptions& options,
                                      std::stop_token stop);

/// What is known of a session before it is planned, and does not change with the room or the
/// people.
struct Groundwork {
    std::vector<PointsPlan> points;      ///< of each job
    std::vector<LayoutMemory> layouts{}; ///< of each job, as far as they were looked for
};

/// A whole plan round points that are known already.
Plan planAround(const Session& session, Groundwork& ground, std::stop_token stop);

/// Plans again with one more table, helper or iron, with everybody an hour longer or there from
/// start to end, with the quickest of all starts, with points wherever they are needed instead of
/// in rows, and ranks what saves most time; changes that save less than a minute are left out. In
/// sessions of very many passes only the first of these are tried.
std::vector<Help> whatWouldHelp(const Session& session, const Plan& plan, Groundwork& ground,
                                const WholeOptions& options, std::stop_token stop);

} // namespace bastewright
