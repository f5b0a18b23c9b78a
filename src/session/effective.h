#pragma once

#include "measures/sentence.h"
#include "session/event.h"

#include <span>
#include <string>
#include <vector>

namespace bastewright {

/// Which events count, once every taking back is taken into account.
///
/// An `undone` event puts its target out of effect. Taking back an `undone` puts that one's target
/// in effect again, and so on for any depth. A taking back is ignored where its target is not among
/// the events before it, is out of effect already, or is the session's start. An id that comes
/// twice counts once, at its first place.
struct Effective {
    std::vector<bool> inEffect; ///< one for each event
    Sentences reasons;          ///< one for each event; why it is ignored, else empty
};
Effective effective(std::span<const Event> events);

} // namespace bastewright
