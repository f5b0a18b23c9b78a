#pragma once

#include "session/event.h"
#include "session/live_state.h"
#include "ways/way.h"

#include <optional>

/// What a tick of a zone means in each way of basting. Ticks are the zone's steps counted from its
/// last: `closed` is the last, `opened` the one before, `dotted` the one before that; `pressed` is
/// the last once more, from the back.
namespace bastewright {

/// The work such a tick is about; none where the way has no such step.
std::optional<TaskKind> workAt(Tick tick, const Way& way);
/// The tick at such work of a zone.
Tick tickAt(TaskKind zoneWork);
/// The first tick of a zone.
Tick firstTick(const Way& way);
/// How far a zone is once it is ticked so.
ZoneState stateAfter(Tick tick);
/// How far it has to be before.
ZoneState stateBefore(Tick tick, const Way& way);
/// How many steps of a zone are done that is so far; pressed from the back is one more.
int stepsDone(ZoneState state, const Way& way);
/// The call at which such a tick is made.
Call callAt(Tick tick, const Way& way);

} // namespace bastewright
