#pragma once

#include "planners/points/pin_rule.h"

#include <functional>

namespace bastewright::points {

/// What every part of the layout works to: the rule for one point, the reach of
/// one point, the least gap between two, and the raster that places are chosen
/// from.
struct Rules {
    explicit Rules(PinRule rule)
        : pin{std::move(rule)} {}

    PinRule pin;
    double spacing = 4;
    double radius = 0;   ///< a place is covered within it: spacing/√2 plus the tolerance used
    double gap = 0;      ///< least distance between two points: spacing/2
    Spot anchor;         ///< of the raster: the head-left corner of the first block, or
                         ///< of the top
    double fine = 0.125; ///< places are multiples of this from the anchor
    double step = 0.5;   ///< raster of the searches, a power of two times `fine`

    const Field& top() const { return pin.top(); }

    /// Raster places of the field where a point obeys the rule, by y then x.
    Spots places(const Field& field, double raster) const;
    Spots places(const Field& field) const { return places(field, step); }
    /// The raster of the searches; half of it where seams leave less than two fifths of a field's
    /// places, as far as `fine` allows.
    double rasterFor(const Field& field, std::size_t coarsePlaces) const;
    /// Raster places within reach of `of` that breach the rule least: the edge is
    /// kept where anything in reach can keep it.
    Spots leastBreach(Spot of) const;
    int angleAt(Spot at) const;
};

Rules rulesFor(const Job& job);

} // namespace bastewright::points
