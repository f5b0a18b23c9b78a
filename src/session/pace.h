#pragma once

#include "plan/plan.h"
#include "session/event.h"
#include "session/live_state.h"

#include <span>
#include <string>

namespace bastewright {

/// Learnt pace of a person against the plan in force, from the ticks since the last re-plan: the
/// inverse of what their time is expected to be over the plan's. 1 where nothing is ticked; a few
/// ticks weigh little against what is usual among people (docs/computation/live.md). A helper's new
/// `pace` is the old one times this.
///
/// Work on a zone counts from the person's previous tick, the quilt's last finished step, their
/// arrival or the end of a break, whichever is latest. An interval during which the clock ran
/// backwards tells nothing; one longer than three times the plan counts as three times. The result
/// lies in 1/4…4.
double learntPace(const Plan& plan, std::span<const Event> events, const std::string& person);

/// Seconds since the session's start, breaks included, to `nowMs` (or the last event, where `nowMs`
/// is 0). Never runs backwards: small steps back are another device's clock, larger ones a clock
/// that was set. Zero before the start.
Seconds elapsed(std::span<const Event> events, std::int64_t nowMs);

/// Expected finish, seconds from the session's actual start, with the range in which it should lie
/// nine times in ten: the simulation of the plan (`crew::finishRange`) of what is left, from what
/// is learnt. The hour to show is the wall clock's plus `left`: that stays right where the clock
/// was set meanwhile.
struct Forecast {
    Seconds finish{}, early{}, late{};
    Seconds left{}; ///< from now to `finish`
    auto operator<=>(const Forecast&) const = default;
};
/// From where people's hours count in a session that began at `began`, where that is known: from
/// there where it is up to three hours before the planned start or six after; else it is another
/// day, and hours count as they were planned.
ClockTime hoursCountFrom(ClockTime planned, std::optional<ClockTime> began);

/// `plan` and `setting` are those in force, `state` the fold of `events`. What is left keeps its
/// people and order; tasks of people who are away fall to whoever has least.
Forecast forecast(const Plan& plan, const Setting& setting, const LiveState& state,
                  std::span<const Event> events, std::int64_t nowMs);

} // namespace bastewright
