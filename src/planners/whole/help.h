#pragma once

#include "planners/points/points.h"
#include "planners/whole/whole.h"

namespace bastewright {

/// The points of every job of a session; they do not depend on the room or the people.
std::vector<PointsPlan> planAllPoints(const Session& session, const WholeOptions& options,
                                      std::stop_token stop);

/// A whole plan round points that are known already.
Plan planAround(const Session& session, const std::vector<PointsPlan>& points,
                const WholeOptions& options, std::stop_token stop);

/// Re-plans with one more table, helper or iron, with everybody an hour longer or there from start
/// to end, with the quickest of all starts, with points wherever they are needed instead of in
/// rows, and ranks what saves most time; changes that save less than a minute are
/// left out.
std::vector<Help> whatWouldHelp(const Session& session, const Plan& plan,
                                const std::vector<PointsPlan>& points, const WholeOptions& options,
                                std::stop_token stop);

} // namespace bastewright
