#pragma once

#include "session/live_state.h"

#include <cstdint>
#include <map>
#include <string>
#include <utility>

namespace bastewright {

/// Pins counted out and counted back in.
struct PinCount {
    std::int64_t box = 0;     ///< what there is in all: the stash and what turned up since
    std::int64_t out = 0;     ///< in the quilts
    std::int64_t back = 0;    ///< counted back in
    std::int64_t left = 0;    ///< in the box now; negative where more went out than it held
    std::int64_t toPlace = 0; ///< that the zones still waiting take
    std::int64_t missing = 0; ///< lost: reported missing, or not back once counting is finished
    std::map<std::pair<int, std::string>, std::int64_t> perZone; ///< out, by (quilt, zone)
    auto operator<=>(const PinCount&) const = default;

    std::int64_t stillOut() const { return out > back ? out - back : 0; }
    std::int64_t shortBy() const { return toPlace > left ? toPlace - left : 0; }
};
PinCount countPins(const Plan& plan, const Setting& setting, const LiveState& state);

/// What people are told where pins are missing: how many, and how to look for them safely. Empty
/// where none is missing.
Sentence missingPinsNotice(const PinCount& pins);

} // namespace bastewright
