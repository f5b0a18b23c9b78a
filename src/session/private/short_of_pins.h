#pragma once

#include "session/live_state.h"
#include "session/replan.h"

#include <string>
#include <utility>
#include <vector>

/// What helps where the pins in the box do not do for all that is left.
namespace bastewright {

/// Lets fuse dots stand in where the pins run short, in all quilts that may have them. Why that is
/// not to be; empty where it is.
Sentence takeDots(Session& session, const Plan& plan, const LiveState& state);

/// In passes that are begun, which no plan changes any more: zones whose points may be fuse dots,
/// so that the pins do for the others.
struct DotsInstead {
    std::vector<std::pair<int, std::string>> zones;
    Sentence said{}; ///< which zones, and how many dots: to be written down
};
/// Of zones that wait, the nearest to the edge of the top first (`zonesForDots`); none where they
/// hold fewer than are missing.
DotsInstead dotsInstead(const Session& session, const Plan& plan, const LiveState& state,
                        const ReplanOptions& options, std::int64_t missing);

/// A plan as far as the pins last: zones in its order until one takes more than are left, the other
/// zones of that pass that can be done, and nothing after it. Work that is left for another day has
/// no task; the next plan, with more pins in the box, takes it up.
struct Today {
    Plan plan;
    Sentences said;
};
Today asFarAsPinsLast(Plan plan, const Setting& setting, const LiveState& state);

} // namespace bastewright
