#pragma once

#include "job/json_text.h"
#include "session/event.h"

/// The plan or session an event carries, as members of its JSON object.
namespace bastewright {

/// Adds `plan` and `session`, each an object as in its own file (docs/formats.md).
void writeCarried(const Carried& carried, Json& event);

/// Reads them; of older libraries also from `text`: a session, a plan, or an object of both as
/// texts. What cannot be read is an UnreadPlan. Nothing for events that carry nothing.
Carried readCarried(EventKind kind, const Json& event);

} // namespace bastewright
