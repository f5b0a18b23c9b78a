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
    std::map<std::string, double> pace; ///< learnt factors on the helpers' own pace; others 1
    int effort = 1;
};

/// Plans again what is left, for the people at the table (`state.present`, and helpers whose hours
/// start later) with the setting as it is now.
///
/// Kept: every finished task with its people and times (its end no later than `now`), every zone,
/// point and pass, and what is in hand — an open zone stays with whoever opened it where they are
/// still there. Task ids do not change. Trouble (nobody can reach a zone, nobody can lift, pins run
/// out) is a finding. Pure and deterministic.
Plan replan(const Session& session, const Plan& plan, const LiveState& state,
            const ReplanOptions& options, std::stop_token stop = {});

/// What a re-plan changes, for people: one sentence for each person whose work changed, the finish,
/// and new findings. Empty where nothing changed.
std::vector<std::string> whatChanged(const Plan& before, const Plan& after, const LiveState& state);

} // namespace bastewright
