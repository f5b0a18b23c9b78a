#pragma once

#include "planners/points/lattice.h"
#include "planners/points/place_map.h"

#include <stop_token>

namespace bastewright::points {

/// Where the points of a lattice go on a top: those it needs, each at the nearest place where it is
/// allowed, then relaxed (see `relax`). They need not cover the top.
Spots laidOn(const Lattice& lattice, const Rules& rules, const PlaceMap& map);

/// Lattices that cover the plane and suit the seams of a top, some two dozen for an effort of 1,
/// most promising first.
///
/// Seams at regular distances leave room for lattices that miss them all or nearly: for seams every
/// 4 in, points 5 1/3 in apart in rows 4 in apart need 3 % more points than no seams at all.
/// Stretched and turned lattices are tried in fine steps, judged by how many points they need and
/// how far those have to move. Some are wanted that move least; others whose points have as much
/// slack as they have to move, which is found out by relaxing them on four patches of the top.
/// `glance`: a quarter as many.
std::vector<Lattice> suitableLattices(const Rules& rules, const PlaceMap& map, int effort,
                                      bool glance, std::stop_token stop);

} // namespace bastewright::points
