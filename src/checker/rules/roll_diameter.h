#pragma once

#include "checker/view.h"

#include <cmath>
#include <numbers>

namespace bastewright::check {

/// Clips exist up to this size (common practice).
inline constexpr Length kLargestClip = Length::inches(4);

/// Area rule of a wound roll without a core: its cross-section is the strip's, packed at 0.8 by
/// hand (from memory). Each turn is batting between two layers of quilting cotton of 0.3 mm (from
/// memory).
inline Length diameterOf(const QuiltView& v, Length wound) {
    constexpr double packing = 0.8;
    const double thick = v.job.batting.thickness.mm() + 2 * 0.3;
    return Length::nearestMillimetres(
        std::sqrt(4 * std::max(wound.mm(), 0.0) * thick / (std::numbers::pi * packing)));
}

} // namespace bastewright::check
