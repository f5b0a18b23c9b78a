#pragma once

#include "session/live_state.h"

#include <string>
#include <vector>

/// What a change means, in sentences for people.
namespace bastewright {

/// When and from which side somebody works a zone that was handed to them.
Sentences howTaken(const Plan& plan, const LiveState& state, int job, const std::string& zone,
                   const std::string& person, ClockTime start);

/// The first zone the pins do not last for, and how many are wanted in all.
Sentences howFarPinsGo(const Plan& plan, const Setting& setting, const LiveState& state);

/// What to do where the quilt lies on tables that are not there any more; empty where it does not.
Sentence tablesAreGone(const Plan& plan);

/// That the passes stay as they are whatever the tables.
Sentences howTablesMatter(int more);

/// Time from the session's start to the last event.
Seconds elapsedOf(const LiveState& state);

/// Leaves out what is not begun of a pass; why it cannot be, or "".
Sentence setAsideRest(const Plan& plan, LiveState& state, int job, int pass);

} // namespace bastewright
