#pragma once

#include "session/event.h"
#include "session/live_state.h"
#include "ways/way.h"

#include <optional>

/// What a tick of a zone means in each way of basting. Ticks are the zone's steps counted from its
/// last: `zoneClosed` is the last, `zoneOpened` the one before, `zoneDotted` the one before that;
/// `zonePressed` is the last once more, from the back.
namespace bastewright {

/// The work such a tick is about; none where the way has no such step.
std::optional<TaskKind> workAt(EventKind tick, const Way& way);
/// The tick at such work of a zone.
EventKind tickAt(TaskKind zoneWork);
/// The first tick of a zone.
EventKind firstTick(const Way& way);
/// How far a zone is once it is ticked so.
ZoneState stateAfter(EventKind tick);
/// How far it has to be before.
ZoneState stateBefore(EventKind tick, const Way& way);
/// The call at which such a tick is made.
Call callAt(EventKind tick, const Way& way);

} // namespace bastewright
