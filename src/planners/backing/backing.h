#pragma once

#include "plan/plan.h"

#include <optional>

namespace bastewright {

struct BackingOutcome {
    std::optional<BackingPlan> plan; ///< nothing where no cloth can make it
    Findings findings;
};

/// Pieces the backing of one job from its fabrics: exact least bought, then least waste, then fewest
/// seams (docs/computation/backing.md). `needed` is the finished size (top + overage on every side).
/// Without fabrics in the job a generic cloth of 40 in usable width is assumed and said.
BackingOutcome planBacking(const Job& job, Size needed);

} // namespace bastewright
