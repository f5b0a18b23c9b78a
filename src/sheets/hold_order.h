#pragma once

#include "plan/plan.h"

#include <vector>

namespace bastewright::sheets {

/// One clamp or piece of tape.
struct HoldPoint {
    int number = 1; ///< in working order, from 1
    Side side = Side::head;
    Hold::Kind kind = Hold::Kind::clamp;
    Length at; ///< along the side, in the quilt's frame
    auto operator<=>(const HoldPoint&) const = default;
};

/// All holds of a pass numbered as they are set: each side's first (the middles of the long sides,
/// then of the short ones), then each side's second, and so outward in turn (common practice).
std::vector<HoldPoint> holdOrder(const Pass& pass);

} // namespace bastewright::sheets
