#pragma once

#include "session/live_state.h"

#include <cstdint>
#include <map>
#include <string>
#include <utility>

namespace bastewright {

/// Pins in the box, in the quilts, and back in the box. Being short of pins is not having lost any:
/// only a count of the box tells what is lost.
struct PinCount {
    std::int64_t box = 0;  ///< what there is in all: the stash and what turned up since
    std::int64_t out = 0;  ///< in the quilts
    std::int64_t back = 0; ///< counted back in
    std::int64_t left = 0; ///< in the box now; negative where more went out than it is said to hold
    std::int64_t toPlace = 0; ///< that the zones still waiting take
    std::int64_t missing = 0; ///< not there when the box was counted, and not found since
    std::map<std::pair<int, std::string>, std::int64_t> perZone; ///< out, by (quilt, zone)
    auto operator<=>(const PinCount&) const = default;

    std::int64_t stillOut() const { return out > back ? out - back : 0; }
    std::int64_t shortBy() const {
        const std::int64_t there = left > 0 ? left : 0;
        return toPlace > there ? toPlace - there : 0;
    }
};
PinCount countPins(const Plan& plan, const Setting& setting, const LiveState& state);
/// The same where some quilt may have no task by which it is seen how it is basted.
PinCount countPins(const Plan& plan, const Session& session, const LiveState& state);

/// What should be in the box: what it held and what turned up, less what was lost and what sits in
/// the quilts.
std::int64_t pinsLeft(const Setting& setting, const LiveState& state);

/// What people are told where pins are missing: how many, and how to look for them safely. Empty
/// where none is missing.
Sentence missingPinsNotice(const PinCount& pins);

} // namespace bastewright
