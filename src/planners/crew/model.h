#pragma once

#include "planners/crew/problem.h"
#include "planners/crew/tasks.h"

namespace bastewright::crew {

/// The abstract problem behind a set of drafts, and the way back to sides of the table.
struct Model {
    Problem problem;
    struct Edge {
        Side side = Side::foot;
    };
    std::vector<Edge> edges; ///< by strip
};

/// Tool 0 is the irons. Person k is helper k. Activity i is draft i.
Model modelOf(const Session& session, const std::vector<Helper>& helpers,
              const std::vector<QuiltPlan>& quilts, const Drafts& drafts);

/// A helper's hours in seconds from the session's start. Clock times more than twelve hours before
/// the start are taken as the next day's.
Person hoursOf(const Helper& helper, ClockTime start);

} // namespace bastewright::crew
