#pragma once

#include "measures/length.h"

/// What the checker forgives, and why; docs/computation/checker.md has the table.
namespace bastewright::check {

/// Coverage: the eighth of an inch people cannot place more exactly than.
inline constexpr Length kPlacing = Length::inch64ths(8);

/// Holes of the coverage whose rim is made of arcs shorter than this are not seen; such a hole is
/// at most about a thousandth of an inch across.
inline constexpr double kShortestArcInches = 1e-4;

/// Distances found with sines, roots and points snapped to nanometres.
inline constexpr Length kFine = Length::nanometres(25'400); // 0.001 in

/// Halves of odd nanometres.
inline constexpr Length kHalving = Length::nanometres(2);

} // namespace bastewright::check
