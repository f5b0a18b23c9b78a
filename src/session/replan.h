#pragma once

#include "plan/plan.h"
#include "session/live_state.h"

#include <map>
#include <stop_token>
#include <string>
#include <vector>

namespace bastewright {

struct ReplanOptions {
    Seconds now{}; ///< since the session's start; nothing new is planned before it
    std::map<std::string, double> pace{}; ///< learnt factors on the helpers' own pace; others 1
    /// Seconds already spent on the tasks in hand, by their ids; others have just begun.
    std::map<std::string, Seconds> inHand{};
    Seconds lastRest{}; ///< when the last break ended
};

/// Plans again what is left, by the rules of the first plan (`planRest`): for the people at the
/// table
/// (`state.present`, and helpers whose hours have yet to begin) with the setting as it is now:
/// their reach, pace and hours, the irons. With nothing done, everybody there and no time gone it
/// is the plan itself.
///
/// Kept: every finished task with its people (its times end no later than `now`), every pass and
/// every point, zones that are begun, and what is in hand: a task that may have begun, because it
/// is next for all its people and waits for nothing, stays with them. In a pass that is begun the
/// zones that are not are shared anew only where people have come or gone; later passes are shared
/// anew. Work that nobody left can do has no task; a later re-plan takes it up again. Trouble is a
/// finding: such work, hours that are too short, pins that will not last, tables that are not the
/// plan's any more.
///
/// `session` is the one in force; its paces are the helpers' own, before `options.pace`. Pure and
/// deterministic.
Plan replan(const Session& session, const Plan& plan, const LiveState& state,
            const ReplanOptions& options, std::stop_token stop = {});

/// The options for a re-plan at this moment, from what the events say.
ReplanOptions replanNow(const Plan& plan, const LiveState& state, std::span<const Event> events,
                        std::int64_t nowMs);

/// The session with the learnt paces written into its helpers: what `settingChanged` stores
/// together with the new plan, because later paces are learnt against that plan.
Session withLearntPaces(Session session, const ReplanOptions& options);

/// What a re-plan changes, for people: a sentence for each change of hands, for work left without
/// anybody, for the finish and for each new finding. Empty where nothing changed.
Sentences whatChanged(const Plan& before, const Plan& after, const LiveState& state);

} // namespace bastewright
