#pragma once

#include "planners/passes/axis.h"

#include <optional>
#include <vector>

namespace bastewright {

/// An axis along which strips are laid beside a first area.
struct StripAxis {
    AxisRoom room;
    bool centred = true;       ///< else the first field holds the quilt's middle somewhere
    std::vector<Length> seams; ///< sorted
    Length step() const { return room.field - room.anchor; }
};

/// Boundaries along one axis, by how many strips are to come beyond them: from the edge inward.
struct StripLines {
    std::vector<Length> lo, hi;
    Interval extent(std::int64_t before, std::int64_t after) const {
        return {lo[static_cast<std::size_t>(before)], hi[static_cast<std::size_t>(after)]};
    }
    Interval first() const { return {lo.back(), hi.back()}; }
};

/// The innermost boundaries with so many strips before and after the first area, which is 12 in
/// wide at least; nothing where the field does not hold it.
std::optional<StripLines> leastLines(const StripAxis& axis, std::int64_t before,
                                     std::int64_t after);

/// So many quarters of the way from the least boundaries to those with equal shares for all, of
/// which the first is wider by the rows that it leaves to its neighbours. On eighths of an inch.
StripLines evened(const StripAxis& axis, const StripLines& least, int quarters);

/// Whether the first area is 12 in wide at least and the field holds it, and every strip with its anchor.
bool fitsField(const StripAxis& axis, const StripLines& lines);

} // namespace bastewright
