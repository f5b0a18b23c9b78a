#include "planners/points/lattice_trial.h"

#include <array>

namespace bastewright::points {
namespace {

/// So many inches of moving, all other points staying, cost a point (by trials on tops with seams
/// every 3 in, every 4 in and in triangles).
constexpr double kWorth = 0.5;

} // namespace

LatticeTrial::LatticeTrial(const Rules& rules, const PlaceMap& map, const Field& field, bool exact)
    : rules_{rules}
    , map_{map}
    , field_{field}
    , exact_{exact} {}

double LatticeTrial::value(const Lattice& lattice) const {
    const double slack = rules_.radius - map_.pitch() / 4 - lattice.reach();
    if (slack < 0)
        return 1e9;
    double sum = 0;
    for (const Spot p : pointsFor(lattice, field_))
        sum += 1 + std::max(0.0, map_.away(map_.inside(p)) - (exact_ ? 0.0 : slack)) / kWorth;
    return sum;
}

RankedLattice LatticeTrial::shifted(RankedLattice from) const {
    constexpr int kShifts = 10;
    const Lattice l = from.lattice;
    for (int i = 0; i < kShifts; ++i)
        for (int j = 0; j < kShifts; ++j) {
            Lattice next = l;
            next.first = l.first + static_cast<double>(i) / kShifts * l.along +
                         static_cast<double>(j) / kShifts * l.aside;
            if (const double v = value(next); v < from.value)
                from = {v, next};
        }
    return from;
}

RankedLattice LatticeTrial::varied(RankedLattice from) const {
    const auto tried = [&](int which, double by) {
        Lattice l = from.lattice;
        double* const of[] = {&l.first.x, &l.first.y, &l.along.x,
                              &l.along.y, &l.aside.x, &l.aside.y};
        *of[which] += which < 2 ? by : by / 10; // a change of a step adds up over the rows
        const double v = value(l);
        if (v >= from.value - 1e-9)
            return false;
        from = {v, l};
        return true;
    };
    for (const double share : {0.17, 0.055, 0.017, 0.0055})
        for (bool again = true; again;) {
            again = false;
            for (int which = 0; which < 6; ++which)
                for (const double sign : {1.0, -1.0})
                    again |= tried(which, sign * share * rules_.radius);
        }
    return from;
}

} // namespace bastewright::points
