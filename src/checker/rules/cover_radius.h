#pragma once

#include "checker/tolerances.h"
#include "job/job.h"

#include <numbers>

namespace bastewright::check {

/// How far a place may be from the nearest point: a square grid of the spacing leaves none farther,
/// the eighth of an inch apart that nobody places more exactly than.
inline Length coverRadius(const Basting& basting) {
    return Length::nearestInches(basting.spacing.in() / std::numbers::sqrt2) + kPlacing;
}

} // namespace bastewright::check
