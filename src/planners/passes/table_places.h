#pragma once

#include "planners/passes/axis.h"

#include <array>
#include <optional>

namespace bastewright {

/// Where the table may lie along one axis for a pass.
struct AxisChoice {
    const AxisLines& lines;
    Length size; ///< of the table
    Interval places;
    std::size_t lo = 0, hi = 0;   ///< what is new lies between these cuts
    std::optional<Length> before; ///< where the table lay
    /// The farthest that anybody gets from both ends; nothing where one is closed, or all is within
    /// reach.
    Length reach;
};

/// A few places, each once; the first is preferred.
class TablePlaces {
public:
    void add(Length at);
    const Length* begin() const { return at_.data(); }
    const Length* end() const { return at_.data() + count_; }

private:
    std::array<Length, 6> at_{};
    std::size_t count_ = 0;
};

/// New area to the table's edge where what is basted lies on one side only, else moved as little as
/// may be; the ends and the middle of what there is; new area on the table's middle; and so that
/// what nobody reaches in the table's middle falls between two lines of points.
TablePlaces tablePlaces(const AxisChoice& choice);

} // namespace bastewright
