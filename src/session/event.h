#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <optional>

namespace bastewright {

enum class EventKind {
    sessionStarted,
    stepDone,      ///< a task of a whole pass (lay, smooth, check, shift, …): `task`
    zoneOpened,    ///< pins in, not closed (dots: placed)
    zoneClosed,    ///< closed (dots: pressed and cooled)
    undone,        ///< takes back the event `target`
    passReleased,  ///< everything of `pass` checked; the next may be shifted in
    personIn,
    personOut,
    pinsFound,     ///< `count` more pins turned up (or, negative, are missing)
    pinsBack,      ///< `count` pins counted back in
    note,          ///< `text`
    paused,
    resumed,
    replanned,     ///< `text` holds the plan from here on, as JSON
    sessionEnded
};

std::string_view name(EventKind kind);
std::optional<EventKind> eventKind(std::string_view name);

/// Something that happened at the table. Append-only: nothing is ever changed or removed, `undone`
/// takes an earlier event back.
struct Event {
    std::string id;         ///< made by whoever reports it; storing the same id twice stores it once
    EventKind kind = EventKind::note;
    std::int64_t atMs = 0;  ///< wall clock, milliseconds since 1970; for pace only, never for order
    int job = 0;            ///< index of the quilt
    int pass = 0;
    std::string zone, person, task, target, text;
    std::int64_t count = 0;
    auto operator<=>(const Event&) const = default;
};

} // namespace bastewright
