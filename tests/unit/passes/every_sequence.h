#pragma once

#include "planners/passes/order.h"

namespace bastewright::testing {

/// The fewest passes of all sequences of windows of any size and place, by breadth-first search
/// over what can have been basted; 0 where more than `most` are needed. For small boards.
std::size_t leastByEverySequence(const Board& board, const Lie& lie, const FirstPass& first,
                                 std::size_t most);

} // namespace bastewright::testing
