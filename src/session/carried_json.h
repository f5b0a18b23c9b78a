#pragma once

#include "job/json_text.h"
#include "session/event.h"

/// The plan or session an event carries, as members of its JSON object.
namespace bastewright {

/// Adds `plan` and `session`, each an object as in its own file (docs/formats.md), where the event
/// carries them.
void writeCarried(const What& what, Json& event);

/// Fills in a new setting or plan; of older libraries also from `text`: a session, a plan, or an
/// object of both as texts. What cannot be read becomes `Unread`. Nothing else is touched.
void readCarried(What& what, const Json& event);

} // namespace bastewright
