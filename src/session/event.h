#pragma once

#include "measures/sentence.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace bastewright {

struct Plan;
struct Session;

enum class EventKind {
    sessionStarted,
    stepDone,      ///< a task of a whole pass (lay, smooth, check, shift, …): `task`
    checkAnswered, ///< at the step `task`: the check named in `text`, `count` 1 for yes, 0 for no
    zoneDotted,    ///< dots only: the zone's dots at the lower face are in
    zoneOpened,    ///< pins in, not closed (dots: the upper face's dots are in too)
    zoneClosed,    ///< closed (dots: pressed)
    zonePressed,   ///< dots in thick batting: pressed once more from the back
    zoneAgain,     ///< a closed zone has to be closed (dots: pressed) once more
    undone,        ///< takes back the event `target`, which may be an `undone` itself
    passAbandoned, ///< what is not begun of `pass` is left out; with a `zone`, that zone alone
    passReleased,  ///< everything of `pass` checked; the next may be shifted in
    personIn,      ///< `person` is at the table
    personOut,
    pinsFound,   ///< `count` more pins turned up (or, negative, the box holds fewer than was said)
    pinsBack,    ///< `count` pins are back in the box
    pinsInBox,   ///< counted: `count` are in the box now; what should be there and is not is lost
    pinsCounted, ///< of older libraries: all are counted back, what is still out is missing
    note,        ///< `text`
    paused,      ///< a break; pauses do not count against anybody's pace
    resumed,
    settingChanged, ///< carries the session (jobs, room, people, boxes) from here on
    replanned,      ///< carries the plan from here on, alone or with the session
    sessionEnded
};

/// True for events that carry a plan or a session, in force from there on.
constexpr bool carries(EventKind kind) {
    return kind == EventKind::settingChanged || kind == EventKind::replanned;
}

/// The word used in files and in the library: "zone-opened".
std::string_view name(EventKind kind);
std::optional<EventKind> eventKind(std::string_view name);

/// A plan that is in force from here on, and the session that goes with it; null where that stays.
struct NewPlan {
    std::shared_ptr<const Plan> plan;
    std::shared_ptr<const Session> session;
};

/// What a file holds in place of a plan or session and cannot be read: kept as it is.
struct UnreadPlan {
    std::string members; ///< of the event, as one JSON object
    Sentence why;        ///< one sentence
};

/// Shared by the event, the fold and whoever shows the session: a plan is read once and never
/// copied.
using Carried = std::variant<std::monostate, std::shared_ptr<const Session>, NewPlan, UnreadPlan>;

/// Something that happened at the table. Append-only: nothing is ever changed or removed, `undone`
/// takes an earlier event back.
struct Event {
    std::string id; ///< made by whoever reports it; storing the same id twice stores it once
    EventKind kind = EventKind::note;
    std::int64_t atMs = 0; ///< wall clock, milliseconds since 1970; for pace only, never for order
    int job = 0;           ///< index of the quilt
    int pass = 0;
    std::string zone, person, task, target, text;
    /// Of pins; of an answer 1 or 0; of a tick, how many seconds before its report it was done.
    std::int64_t count = 0;
    Carried carried{};
    /// Plans and sessions are compared by what they say.
    bool operator==(const Event& other) const;
};

} // namespace bastewright
