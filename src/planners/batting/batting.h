#pragma once

#include "plan/plan.h"

#include <optional>
#include <vector>

namespace bastewright {

struct BattingOutcome {
    std::optional<BattingPlan> plan;
    Findings findings; ///< where impossible: the least that must be bought and its size
};

/// The batting of one job: the smallest pack that holds `needed`, or, where the job lists pieces, the
/// leftovers joined by straight cuts through two overlapped layers: fewest joins, then shortest
/// (docs/computation/batting.md). `backingSeams` are in the batting's frame; joins keep 2 in away
/// from those they run along.
BattingOutcome planBatting(const Job& job, Size needed, const std::vector<Segment>& backingSeams = {});

} // namespace bastewright
