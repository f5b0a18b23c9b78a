#pragma once

#include "planners/crew/afternoons.h"
#include "session/private/work_log.h"

namespace bastewright {

/// What the ticks say of everybody's pace, as logarithms of actual over planned time
/// (docs/computation/live.md, "Learnt pace"): a part common to all and one of each person's own,
/// both normal before anything is ticked, by the trade's spreads; every tick is evidence of their
/// sum. The posterior is exact.
struct Learnt {
    crew::PaceDoubt common;
    std::map<std::string, crew::PaceDoubt> people; ///< given the common part; of who has ticked

    /// Middle of a person's time over the plan's: below 1 is quicker than planned.
    double slowness(const std::string& person) const;
};

Learnt learntFrom(const WorkLog& log);

} // namespace bastewright
