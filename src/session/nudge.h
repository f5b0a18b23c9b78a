#pragma once

#include "session/live_state.h"

#include <span>
#include <string>
#include <vector>

namespace bastewright {

/// A quiet hint to the people at the table; never blocks anything.
struct Nudge {
    enum class Kind { rest, slowZone, pinsShort, pinsMissing, behind };
    Kind kind = Kind::rest;
    int job = 0;
    std::string zone{}, person{}; ///< of a slow zone
    Sentence text{};              ///< one sentence
    auto operator<=>(const Nudge&) const = default;
};

/// What is worth saying now, most pressing first. `plan` is the plan in force, `state` the fold of
/// `events`, `finish` what the forecast says now (pace.h).
std::vector<Nudge> nudges(const Plan& plan, const Setting& setting, const LiveState& state,
                          std::span<const Event> events, std::int64_t nowMs, Seconds finish);

} // namespace bastewright
