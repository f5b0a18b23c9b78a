#pragma once

#include "planners/points/rules.h"

#include <stop_token>

namespace bastewright::points {

/// How the blocks of a top repeat, in inches.
struct BlockFrame {
    Spot first;                    ///< head-left corner of the first block
    double pitchX = 0, pitchY = 0; ///< block and sashing
    double blockX = 0, blockY = 0;
    int columns = 0, rows = 0;

    double lastX() const { return first.x + (columns - 1) * pitchX + blockX; }
    double lastY() const { return first.y + (rows - 1) * pitchY + blockY; }
};

/// A pattern of points that repeats over `across` × `down` blocks with their sashing.
struct TilePattern {
    int across = 1, down = 1;
    Spots points;     ///< from the tile's head-left corner
    int symmetry = 1; ///< size of the group of turns and mirrors it obeys
    double room =
        0; ///< least distance of a point from a seam, where seams leave less than is asked
};

struct TileRequest {
    int across = 1, down = 1;
    int column = 0, row = 0; ///< the block whose seams stand for all
    int steps = 2000;
    int most = 8; ///< patterns wanted
};

/// Patterns with the fewest points, the plainest first.
std::vector<TilePattern> tilePatterns(const Rules& rules, const BlockFrame& frame,
                                      const TileRequest& request, std::stop_token stop);

} // namespace bastewright::points
