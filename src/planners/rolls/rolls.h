#pragma once

#include "plan/plan.h"

namespace bastewright {

/// How full a quilt rolled by hand fills its roll (from memory); 1 is wound without air.
inline constexpr double kHandPacking = 0.8;

/// Diameter of a strip `wound` long and `thick` thick rolled on a core: D = sqrt(d² + 4·L·t /
/// (π·packing)). Source: area rule of wound rolls (tests/unit/rolls name the published examples).
/// packing lies above 0 and up to 1.
Length rollDiameter(Length wound, Length thick, Length core = {}, double packing = kHandPacking);

/// Thickness of one turn of the sandwich: batting, and two layers of quilting cotton of 0.3 mm
/// (from memory).
Length sandwichThickness(const Batting& batting);

/// Clips that hold thicker rolls are not sold (common practice: snap-round and hoop clips hold 2-4
/// in).
inline constexpr Length kLargestClip = Length::inches(4);

/// The smallest clip on hand that holds the roll, and how many along it: one every 15 in, at least
/// two (common practice: one every 12-18 in). Sizes of which there are too few come after those of
/// which there are enough. clipHolds is zero where none is large enough; clips then is the number
/// that would be needed.
Roll clipped(Roll roll, const Stash& stash);

} // namespace bastewright
