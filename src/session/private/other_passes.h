#pragma once

#include "session/replan.h"

#include <optional>

/// What is left of a quilt on other passes than were planned (docs/computation/live.md, "Other
/// passes for the rest"). What is basted stays; the pass on the table, once anything of it is done,
/// is finished where it lies.
namespace bastewright {

struct OtherPasses {
    Sentence refused{}; ///< why it cannot be; then nothing else is set
    Session session;    ///< without hand-overs of zones that are no more
    Plan plan;
    int finishing = 0; ///< the pass that is finished first where it lies; 0: none
};

/// On the tables that are in the room now.
OtherPasses onOtherTables(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop = {});

/// The same tables, the rows of what is left so far apart that the pins in the box do. Only between
/// two passes: rows of a pass that is begun are marked on the ribbons.
OtherPasses withWiderRows(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop = {});

} // namespace bastewright
