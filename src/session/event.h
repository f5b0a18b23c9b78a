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

/// How far a zone's work is, as it is reported.
enum class Tick {
    dotted, ///< dots only: the zone's dots at the lower face are in
    opened, ///< pins in, not closed (dots: the upper face's dots are in too)
    closed, ///< closed (dots: pressed)
    pressed ///< dots in thick batting: pressed once more from the back
};

/// What can happen at the table. `job` is the index of the quilt.
namespace happened {

struct Started {
    bool operator==(const Started&) const = default;
};

/// A task of a whole pass is done: lay, smooth, check, shift, …
struct Step {
    int job = 0, pass = 0;
    std::string person{}, task{};
    std::int64_t secondsAgo = 0; ///< how long before its report it was done
    bool operator==(const Step&) const = default;
};

/// What was asked at the step `task` is answered.
struct Answer {
    int job = 0;
    std::string task{}, check{}; ///< the check's name (checks.h)
    std::int64_t yes = 0;        ///< 1 or 0
    bool operator==(const Answer&) const = default;
};

struct ZoneTick {
    Tick kind = Tick::opened;
    int job = 0;
    std::string zone{}, person{};
    std::int64_t secondsAgo = 0;
    bool operator==(const ZoneTick&) const = default;
};

/// A closed zone has to be closed (dots: pressed) once more.
struct ZoneAgain {
    int job = 0;
    std::string zone{};
    bool operator==(const ZoneAgain&) const = default;
};

/// Takes back the event `target`, which may be an `Undone` itself.
struct Undone {
    std::string target{};
    bool operator==(const Undone&) const = default;
};

/// What is not begun of the pass is left out; with a `zone`, that zone alone.
struct LeftOut {
    int job = 0, pass = 0;
    std::string zone{};
    bool operator==(const LeftOut&) const = default;
};

/// Everything of the pass is checked; the next may be shifted in.
struct Released {
    int job = 0, pass = 0;
    bool operator==(const Released&) const = default;
};

/// Somebody is at the table from now on, or has left it.
struct Presence {
    enum class Kind { in, out };
    Kind kind = Kind::in;
    std::string person{};
    bool operator==(const Presence&) const = default;
};

struct Pins {
    enum class Kind {
        found, ///< so many more turned up (or, negative, the box holds fewer than was said)
        back,  ///< so many are back in the box
        inBox  ///< counted: so many are in the box now; what should be there and is not is lost
    };
    Kind kind = Kind::found;
    std::int64_t count = 0;
    bool operator==(const Pins&) const = default;
};

/// Of older libraries: all pins are counted back, what is still out is missing.
struct PinsCounted {
    bool operator==(const PinsCounted&) const = default;
};

struct Note {
    std::string text{};
    bool operator==(const Note&) const = default;
};

/// A break; breaks do not count against anybody's pace.
struct Paused {
    bool operator==(const Paused&) const = default;
};

struct Resumed {
    bool operator==(const Resumed&) const = default;
};

/// The session (jobs, room, people, boxes) that is in force from here on. Shared by the event, the
/// fold and whoever shows the session, as plans are: read once and never copied. Compared by what
/// it says.
struct NewSetting {
    std::shared_ptr<const Session> session; ///< never null
    bool operator==(const NewSetting& other) const;
};

/// The plan that is in force from here on.
struct NewPlan {
    std::shared_ptr<const Plan> plan;         ///< never null
    std::shared_ptr<const Session> session{}; ///< that goes with it; null where that stays
    bool operator==(const NewPlan& other) const;
};

/// A plan or session that a file holds and that cannot be read: kept as it is.
struct Unread {
    enum class Kind { setting, plan };
    Kind kind = Kind::plan;
    std::string members{}; ///< of the event, as one JSON object
    Sentence why{};        ///< one sentence
    bool operator==(const Unread& other) const {
        return kind == other.kind && members == other.members;
    }
};

struct Ended {
    bool operator==(const Ended&) const = default;
};

} // namespace happened

using What =
    std::variant<happened::Note, happened::Started, happened::Step, happened::Answer,
                 happened::ZoneTick, happened::ZoneAgain, happened::Undone, happened::LeftOut,
                 happened::Released, happened::Presence, happened::Pins, happened::PinsCounted,
                 happened::Paused, happened::Resumed, happened::NewSetting, happened::NewPlan,
                 happened::Unread, happened::Ended>;

/// The word used in files and in the library: "zone-opened".
std::string_view name(const What& what);
std::string_view name(Tick tick);
/// What a word stands for, without its members.
std::optional<What> whatNamed(std::string_view name);

/// Functions for the kinds of `What`, to be given to std::visit.
template <class... Functions>
struct ForEach : Functions... {
    using Functions::operator()...;
};

/// Something that happened at the table. Append-only: nothing is ever changed or removed, `Undone`
/// takes an earlier event back.
struct Event {
    std::string id{};      ///< made by whoever reports it; storing the same id twice stores it once
    std::int64_t atMs = 0; ///< wall clock, milliseconds since 1970; for pace only, never for order
    What what{};
    bool operator==(const Event&) const = default;

    template <class Kind>
    bool is() const {
        return std::holds_alternative<Kind>(what);
    }
};

} // namespace bastewright
