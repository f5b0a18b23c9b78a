#pragma once

#include "plan/plan.h"

#include <span>
#include <vector>

namespace bastewright {

struct ZoneInput {
    Size top;
    std::vector<Pass> passes; ///< with number, fresh and table
    std::vector<Side> closed;
    std::vector<Length> seamsX, seamsY; ///< sorted places where a zone line may run along a seam
    Length reach;                       ///< that most helpers have; zones are made to suit it
    std::size_t people = 1; ///< who may work side by side
    bool floor = false;     ///< nothing is out of reach
};

/// Cuts the top into zones by a grid that contains every pass boundary, sides near equal and at
/// most the reach, on seams where that costs nothing, each reachable from a side of the table; then
/// gives every point to the zone that it lies in. Of several finenesses the one that the people get
/// through soonest. Zones in reading order: row by row, letters across, numbers down.
std::vector<Zone> cutZones(const ZoneInput& in, std::span<const PlacedPoint> points);

/// Letters of a column: A…Z, AA, AB…
std::string columnLetters(std::size_t column);

} // namespace bastewright
