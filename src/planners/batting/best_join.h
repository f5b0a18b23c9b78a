#pragma once

#include "planners/batting/leftovers.h"

#include <optional>

namespace bastewright::batting {

struct BestJoin {
    std::optional<JoinLayout> layout;
    bool fewest = true;   ///< no fewer joins do it; false: the search stopped before it knew
    bool shortest = true; ///< of as few joins no layout as clean is shorter
    bool cleanest = true; ///< of as few joins none has fewer corners meeting
};

/// Least number of pieces of the pool that can be joined to what is needed, if `most` or fewer can;
/// `work` is used up by the search.
std::optional<int> fewestPieces(const Pool& pool, int most, std::uint64_t& work);

/// The best way to join some of the pool: fewest joins; of those no four corners, off the backing's
/// seams, shortest, of the least area of pieces. A layout with up to two more joins is taken where
/// fewer have four corners meeting.
BestJoin bestJoin(const Pool& pool, const std::vector<Segment>& backingSeams, std::uint64_t work);

} // namespace bastewright::batting
