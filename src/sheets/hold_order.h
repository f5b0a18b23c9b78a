#pragma once

#include "plan/plan.h"

#include <vector>

namespace bastewright::sheets {

/// One clamp or piece of tape.
struct HoldPoint {
    int number = 1; ///< the round in which it is set, from 1; those that face each other share one
    Side side = Side::head;
    Hold::Kind kind = Hold::Kind::clamp;
    Length at; ///< along the side, in the quilt's frame
    auto operator<=>(const HoldPoint&) const = default;
};

/// All holds of a pass in the order in which they are set (`Hold::numbers`).
std::vector<HoldPoint> holdOrder(const Pass& pass);

} // namespace bastewright::sheets
