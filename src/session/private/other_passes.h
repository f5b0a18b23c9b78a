#pragma once

#include "session/replan.h"

#include <optional>
#include <utility>
#include <vector>

/// What is left of quilts on other passes than were planned (docs/computation/live.md, "Other
/// passes for the rest"). What is basted stays; the pass on the table, once anything of it is done,
/// is finished where it lies.
namespace bastewright {

struct OtherPasses {
    Sentence refused{}; ///< why it cannot be; then nothing else is set
    Session session;    ///< without hand-overs of zones that are no more
    Plan plan;
    /// (quilt, pass) that are finished first where they lie.
    std::vector<std::pair<int, int>> finishing{};
};

/// On the tables that are in the room now. Of several quilts those whose tables are there stay on
/// them, as far as the tables go; the others go on with what is left of the tables, or on those of
/// another quilt after it.
OtherPasses onOtherTables(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop = {});

/// The same tables, the rows of what is left so far apart that the pins in the box do. Only between
/// two passes: rows of a pass that is begun are marked on the ribbons.
OtherPasses withWiderRows(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop = {});

} // namespace bastewright
