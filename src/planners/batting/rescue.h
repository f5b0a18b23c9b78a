#pragma once

#include "planners/batting/best_join.h"

#include <optional>
#include <string>

namespace bastewright::batting {

/// A join that works once one leftover is cut in two.
struct Rescue {
    Pool pool; ///< with the two parts in place of the whole
    BattingSplit split;
    BestJoin join;
};

/// Splits each piece in turn at the places where a part would fill what one or two other pieces
/// leave of the needed width or length, match another piece, or be a half, the likeliest first;
/// takes the result of fewest joins. Nothing where no such split helps, or none is found before
/// `work` is used up.
std::optional<Rescue> splitOne(const Pool& pool, const std::vector<Segment>& backingSeams,
                               std::uint64_t work);

/// The smallest further piece (by area, whole inches or centimetres) that makes the pool suffice
/// when it is joined on in the last or the last but one joint. Raw size, with trimmed edges and
/// overlap.
Size leastExtra(const Pool& pool, Unit unit);

} // namespace bastewright::batting
