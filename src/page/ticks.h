#pragma once

#include "view/table/live_controller.h"

#include <string_view>

namespace bastewright::page {

/// What became of a tick that a guest asked for.
struct TickAnswer {
    int status = 200; ///< of RFC 9110
    QString told{};   ///< one sentence for the guest where it does not count; else empty
    QString logged{}; ///< for the log where it was refused
};

/// `body` is the JSON that the page's script sends: `id` (made there, a UUID), `quilt`, `zone`,
/// `kind` (the tick it is for, so that two devices at one zone do not open and close it between
/// them) and `person`. Only ticks of zones, and only by somebody whose work it is; whether one
/// counts is the session's to say (`Turns::mayTick`). Sending the same once more is harmless.
TickAnswer takeTick(LiveController& live, std::string_view body);

/// `id` and `person`: takes back that person's last tick, while its call is in force.
TickAnswer takeBack(LiveController& live, std::string_view body);

} // namespace bastewright::page
