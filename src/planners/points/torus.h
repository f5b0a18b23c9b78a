#pragma once

#include "planners/points/repeat_frame.h"
#include "planners/points/rules.h"

#include <span>
#include <vector>

namespace bastewright::points {

/// A turn or mirror about the middle of a tile's first block, then so many pitches on. Blocks that
/// are each other's image carry one pattern, turned or mirrored.
struct Move {
    enum class Turn { stay, mirrorX, mirrorY, halfTurn, turn, turnBack, diagonal, antiDiagonal };
    Turn turn = Turn::stay;
    int across = 0, down = 0;
};

/// Moves under which a pattern stays what it is, by generators.
using Group = std::vector<Move>;

/// A tile of one or several blocks with their sashing, its opposite sides joined.
class Torus {
public:
    /// Block `column`, `row` of the frame is the tile's first.
    Torus(const Rules& rules, const BlockFrame& frame, int across, int down, int column, int row);

    bool square() const;
    Field field() const { return {0, 0, width_, length_}; }
    Spot wrapped(Spot p) const;
    Spot moved(Spot p, const Move& move) const;
    /// The place and its images, once each.
    Spots orbit(Spot p, const Group& group) const;
    /// Every copy that reaches the tile.
    Spots copies(const Spots& places) const;
    Spots candidates(double raster) const;

    bool allowed(Spot p) const { return rules_.pin.angleAt(corner_ + p).has_value(); }
    double room(Spot p) const { return rules_.pin.mostRoom(corner_ + p).room; }
    Spots leastBreach(Spot w) const;

private:
    const Rules& rules_;
    double pitchX_, pitchY_, width_, length_;
    Spot middle_, corner_;
};

} // namespace bastewright::points
