#pragma once

#include "plan/plan.h"

#include <optional>
#include <string_view>
#include <vector>

namespace bastewright {

/// The fabric of panels that need a cloth the job does not list.
inline constexpr std::string_view kUnlistedCloth = "another fabric";

struct BackingOptions {
    int blocks = 5; ///< most blocks a pieced column is made of
    /// Lines a seam that runs along them keeps 2 in away from where that costs no cloth: table
    /// joins of the first pass, joins of the batting. In the backing's frame.
    std::vector<Segment> keepAway;
    bool nearestMiss = true; ///< also look for the smallest change that would save cloth
    bool ways = false;       ///< also lay out every alternative
};

struct BackingOutcome {
    std::optional<BackingPlan> plan; ///< nothing where no cloth can make it
    /// Where asked for: panels, cuts and purchases of each of the plan's alternatives, in their
    /// order. What is of a cloth the job does not list has panels called `kUnlistedCloth`, no cuts.
    std::vector<BackingPlan> ways;
    Findings findings;
};

/// Pieces the backing of one job from its fabrics as people would sew it: least bought with every
/// seam counted as `seam_worth` of cloth, exact over the layouts of docs/computation/backing.md.
/// `needed` is the finished size (top + overage on every side). 'Bought' is money where every cloth
/// that may be bought has a price, else length. The least bought whatever its seams, the runner-up
/// and the nearest miss are said beside it. Rules on narrow pieces are given up, and that is said,
/// where no layout keeps them.
///
/// Where the job names a `way` that is among those no other beats, that one is the plan; where it
/// is not, a note says so.
///
/// Without fabrics in the job a generic cloth of 40 in usable width is assumed and said. Where the
/// cloth cannot do it there is no plan, and a finding of level stop names the least to buy. Bad
/// input (a width of zero, an overage wider than the cloth) is one finding naming the field. Pure.
BackingOutcome planBacking(const Job& job, Size needed, const BackingOptions& options = {});

} // namespace bastewright
