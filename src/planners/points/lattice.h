#pragma once

#include "planners/points/spot.h"

namespace bastewright::points {

/// Endless even rows of points: `first` and all sums of multiples of `along` and `aside`.
struct Lattice {
    Spot first, along, aside;

    /// The same points by their two shortest steps, at most a right angle apart (Lagrange, Gauss).
    Lattice reduced() const;
    /// Greatest distance of a place of the plane from its nearest point: the radius of the circle
    /// round the triangle of the two shortest steps.
    double reach() const;
};

/// The points of a lattice in a field, and those outside of whose cell (the places nearest to them)
/// a corner lies in it; by row.
Spots pointsFor(const Lattice& lattice, const Field& field);

} // namespace bastewright::points
