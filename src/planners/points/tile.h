#pragma once

#include "planners/points/repeat_frame.h"
#include "planners/points/torus.h"

#include <limits>
#include <optional>
#include <stop_token>

namespace bastewright::points {

/// A pattern of points that repeats over `across` × `down` blocks with their
/// sashing.
struct TilePattern {
    int across = 1, down = 1;
    Spots points;     ///< from the tile's head-left corner
    Group group;      ///< turns and mirrors it obeys
    int symmetry = 1; ///< their number
    double room = 0;  ///< least distance of a point from a seam, where seams leave
                      ///< less than is asked
};

/// Different distances from the tile's corner: the fewer, the easier to lay and
/// to remember.
std::size_t distances(const TilePattern& pattern);

struct TileRequest {
    int across = 1, down = 1;
    bool pair = false;       ///< of two blocks, each or both together symmetric
    bool quick = false;      ///< only the first patterns that come up, without looking
                             ///< for symmetry
    int column = 0, row = 0; ///< the block whose seams stand for all
    int steps = 2000;
    int most = 8; ///< patterns wanted
    int below = std::numeric_limits<int>::max(); ///< only patterns of fewer points are of use
};

/// Patterns with the fewest points, the plainest first.
std::vector<TilePattern> tilePatterns(const Rules& rules, const BlockFrame& frame,
                                      const TileRequest& request, std::stop_token stop);

/// A pattern with as many points, one of them (with its images) moved a little;
/// none where the move that chance picked leaves something uncovered.
std::optional<TilePattern> varied(const Rules& rules, const BlockFrame& frame,
                                  const TileRequest& request, const TilePattern& pattern,
                                  Dice& dice);

} // namespace bastewright::points
