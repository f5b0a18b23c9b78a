#pragma once

#include "planners/points/place_map.h"

namespace bastewright::points {

/// Moves points, allowed ones to allowed places, so that the greatest distance of a place of the
/// top from its nearest point shrinks: each goes to where its own cell (the places nearest to it)
/// is best held, again and again. No point's farthest place ever gets farther by its own move. Ends
/// early where the whole top is in reach. Points outside `within` stay.
void relax(Spots& points, const Rules& rules, const PlaceMap& map, int sweeps, const Field& within);

} // namespace bastewright::points
