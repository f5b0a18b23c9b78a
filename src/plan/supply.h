#pragma once

#include "plan/plan.h"

#include <string>

namespace bastewright {

/// Sold and cut by the yard or inch, so that its number is said in eighths where the plan is in
/// inches; all else is counted, or said in decimals of a metre.
constexpr bool isSaidInEighths(Supply::Kind kind, Unit unit) {
    using enum Supply::Kind;
    return unit == Unit::inch &&
           (kind == fabric || kind == battingRoll || kind == tape || kind == joiningStrip);
}

/// "12 3/8": yards or inches in eighths, without the unit.
inline std::string inEighths(double number) {
    return format(Length::nearestInches(number), Unit::inch, false);
}

} // namespace bastewright
