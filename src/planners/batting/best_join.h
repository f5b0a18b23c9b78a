#pragma once

#include "planners/batting/leftovers.h"

#include <optional>

namespace bastewright::batting {

struct BestJoin {
    std::optional<JoinLayout> layout;
    bool proven = true; ///< false: the search stopped before it knew
};

/// Least number of pieces of the pool that can be joined to what is needed, if `most` or fewer can;
/// `work` is used up by the search.
std::optional<int> fewestPieces(const Pool& pool, int most, std::uint64_t& work);

/// The best way to join some of the pool: fewest joins; of those no four corners, off the backing's
/// seams, shortest. A layout with up to two more joins is taken where fewer have four corners
/// meeting.
BestJoin bestJoin(const Pool& pool, const std::vector<Segment>& backingSeams, std::uint64_t work);

} // namespace bastewright::batting
