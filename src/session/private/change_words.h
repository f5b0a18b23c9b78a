#pragma once

#include "session/change.h"

#include <string>
#include <vector>

/// What a change means, in sentences for people.
namespace bastewright {

/// When and from which side somebody works a zone that was handed to them.
Sentences howTaken(const Plan& plan, const LiveState& state, int job, const std::string& zone,
                   const std::string& person, ClockTime start);

/// The first zone the pins do not last for, and how many are wanted in all; `start` is the time of
/// day at which the session began.
Sentences howFarPinsGo(const Plan& plan, const Setting& setting, const LiveState& state,
                       ClockTime start);

/// A quilt by its name, or by its number where it has none.
Sentence quiltNamed(const Plan& plan, int job);

/// That a pass is finished where it lies before the quilt goes on otherwise.
Sentence finishedWhereItLies(const Plan& plan, int job, int pass);

/// That the passes stay as they are with more, or fewer, tables.
Sentence howTablesMatter(int more);

/// What moves where what is left goes by other passes: how many, on what, with how many pins.
Sentences passesChanged(const Plan& before, const Plan& after, const WhatIsLeft& was,
                        const WhatIsLeft& is);

/// Time from the session's start to the last event.
Seconds elapsedOf(const LiveState& state);

/// Leaves out what is not begun of a pass; why it cannot be, or "".
Sentence setAsideRest(const Plan& plan, LiveState& state, int job, int pass);

/// Leaves out one zone that is not begun, of the pass on the table or a later one.
Sentence setAsideZone(const Plan& plan, LiveState& state, int job, const std::string& zone);

} // namespace bastewright
