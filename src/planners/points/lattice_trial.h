#pragma once

#include "planners/points/lattice.h"
#include "planners/points/place_map.h"

namespace bastewright::points {

struct RankedLattice {
    double value = 1e9; ///< points, and shares of points for what has to move
    Lattice lattice;
};

/// What a lattice costs on a field: its points, and a share of a point for each inch that one of
/// them has to move to where it is allowed.
class LatticeTrial {
public:
    /// `exact`: all moving counts; else only what goes beyond the lattice's slack, which is its
    /// reach less the rules' radius.
    LatticeTrial(const Rules& rules, const PlaceMap& map, const Field& field, bool exact);

    /// Of a lattice that does not cover the plane: beyond all others.
    double value(const Lattice& lattice) const;

    /// The same lattice where it falls best.
    RankedLattice shifted(RankedLattice from) const;
    /// Start and steps varied, less and less, while that helps.
    RankedLattice varied(RankedLattice from) const;

private:
    const Rules& rules_;
    const PlaceMap& map_;
    Field field_;
    bool exact_;
};

} // namespace bastewright::points
