#pragma once

#include "planners/passes/layout.h"

namespace bastewright::testing {

/// A top with pins in rows across it: rows about 4 3/8 in apart, a pin about every 4 7/8 in, every
/// second row half a step over.
Board rowsAcross(Length width, Length length);

/// A top with a point in the middle of every square of this side.
Board squares(Length width, Length length, Length side);

/// A table of this size as the quilt lies on it, all sides open.
Lie tableOf(Length x, Length y, Length reach = Length::inches(31));

/// Passes of the better of both ways to lie, from the middle, beside it or from an end; 0 where
/// there are none.
std::size_t fewest(const Board& board, Length length, Length width, Basting::Start start,
                   Length reach = Length::inches(31));

/// What is wrong with a sequence, found by going over the top in half inches: every place basted
/// once, every point inside the field, within reach or pulled across, 6 in of what is basted on the
/// table beside every boundary, no bare place left between basted ones. Empty where nothing is.
std::string faults(const Board& board, const Lie& lie, const Sequence& sequence);

} // namespace bastewright::testing
