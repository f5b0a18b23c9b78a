#pragma once

#include "plan/plan.h"

#include <optional>
#include <vector>

namespace bastewright {

struct BattingOutcome {
    std::optional<BattingPlan> plan;
    Findings findings; ///< where impossible: the least that must be bought and its size
};

/// The batting of one job. Where it lists pieces, and neither a roll nor a pack that holds
/// `needed`, the leftovers joined by straight cuts through two overlapped layers: fewest joins,
/// then shortest (docs/computation/batting.md); a named pack that is too small is joined with them.
/// Else what is bought: the smallest pack that holds, a length off the roll, or the way of fewest
/// joins of two packs or of lengths off one roll. A quilt wider than anything is planned with a
/// join.
///
/// No four corners meet and no join runs within 2 in along a `backingSeams` (in the batting's
/// frame) where a layout of as few joins, or for the corners of one or two more, avoids it; else a
/// finding says so. Where whole pieces do not suffice, one may be split first. Exact for up to 12
/// pieces, and for pools of up to 20 as far as the search reaches; it says where it stopped short.
/// Pure.
BattingOutcome planBatting(const Job& job, Size needed,
                           const std::vector<Segment>& backingSeams = {});

} // namespace bastewright
