#pragma once

#include "job/job.h"

#include <optional>

/// What the readings of a top say about its corners.
namespace bastewright {

struct Squareness {
    Length widthSpread, lengthSpread; ///< largest less smallest reading
    /// How far the foot lies to the right of where it would with square corners (negative: to the
    /// left); nothing without diagonals. From the law of cosines with the mean width w:
    /// lean = (d₁² − d₂²) / 4w, d₁ running from the head-left corner.
    std::optional<Length> lean;
    /// Nothing is off by more than 1/2 in (common practice for a top that can still be eased flat).
    bool square = true;
};

/// Largest less smallest reading; nothing where there are none.
Length spread(const std::vector<Length>& readings);

inline constexpr Length kSquareEnough = Length::inch64ths(32);

Squareness squareness(const Top& top);

} // namespace bastewright
