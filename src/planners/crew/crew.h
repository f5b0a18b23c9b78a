#pragma once

#include "plan/plan.h"
#include "planners/crew/situation.h"

#include <span>
#include <stop_token>

namespace bastewright {
namespace crew {
class SharingMemory;
}

struct CrewOptions {
    bool range = true; ///< the finish is simulated too; false where only its middle is asked for
    bool bound = true; ///< a bound of the finish is proven too, else it is 0
    /// Of a few ways to share people among several tables, or to spread them round one, the best is
    /// taken, else the first.
    bool sharings = true;
    /// What was shared out before, by plans of the same session; without it nothing is remembered.
    crew::SharingMemory* memory = nullptr;
};

struct CrewPlan {
    std::vector<Task> tasks; ///< by start, then id; of the rest only those that are not done
    std::vector<PlannedBreak> breaks;
    Seconds finish{};
    FinishRange range{};
    Seconds bound{};   ///< proven lower bound of the finish, see `earliestFinish`
    Findings findings; ///< a zone nobody can reach, hours too short, nobody may iron, …
};

/// Who stands where, does what, when (docs/computation/crew.md). `quilts` come with their surface
/// and passes, `points` with every quilt's points; the quilts get their zones, their passes zones
/// and stretches. Quilts with the same surface number follow one another in order, others run side
/// by side. Where hours are too short the plan runs past them, and a finding of level stop says by
/// how much. Pure and deterministic. A stop makes it quicker and no less complete.
CrewPlan planCrew(const Session& session, std::vector<QuiltPlan>& quilts,
                  std::span<const std::vector<PlacedPoint>> points, const CrewOptions& options = {},
                  std::stop_token stop = {});

/// The same of what is left, by the same rules: from `situation.now` on, with who is there, what is
/// done and what is in hand. Passes in which zones are begun keep those; all else is shared anew.
/// With nothing done and everybody there at second 0 it is the plan itself.
CrewPlan planRest(const Session& session, std::vector<QuiltPlan>& quilts,
                  std::span<const std::vector<PlacedPoint>> points, const Situation& situation,
                  const CrewOptions& options = {}, std::stop_token stop = {});

} // namespace bastewright
