#pragma once

#include "planners/points/rules.h"

#include <vector>

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

/// One direction of a top cut into a first, a middle and a last kind of
/// stretch.
///
/// A tile is one or several blocks with their sashing. The first stretch is the
/// border and the first tile, the last one the last tile and the border; all
/// tiles between are alike, so one stands for them. With two tiles there is no
/// middle, with one only a single stretch.
struct AxisKinds {
    struct Kind {
        double lo = 0, hi = 0; ///< of the stretch that stands for the kind
        int tile = 0;          ///< its tile, counted from 0
        int times = 1;         ///< how often the kind occurs
        bool periodic = false;
    };
    /// A tile near a stretch: how far it lies from tile 0, and its kind.
    struct Copy {
        double shift = 0;
        int kind = 0;
    };

    AxisKinds(double topLo, double topHi, double first, double last, double tile, int tiles);

    int kindOf(int number) const { return number == 0 ? 0 : number == tiles - 1 ? last() : 1; }
    /// The last stretch is as long as the first: whole tiles without sashing between equal borders.
    bool symmetric() const;
    int last() const { return static_cast<int>(kinds.size()) - 1; }
    /// Tiles within `reach` of the stretch of a kind; those of a periodic kind
    /// are all of that kind.
    std::vector<Copy> copies(int kind, double reach) const;

    double first = 0, end = 0; ///< the blocks lie between
    double tile = 0;
    int tiles = 1;
    std::vector<Kind> kinds;
};

/// The top by kinds: everything that repeats is looked at once.
struct RepeatFrame {
    RepeatFrame(const Field& top, const BlockFrame& blocks, int across, int down);

    /// Kinds of place, x kind + y kind × kinds across: nine for a large top.
    int count() const { return static_cast<int>(x.kinds.size() * y.kinds.size()); }
    int xKind(int place) const { return place % static_cast<int>(x.kinds.size()); }
    int yKind(int place) const { return place / static_cast<int>(x.kinds.size()); }
    Field field(int place) const;
    bool periodicX(int place) const {
        return x.kinds[static_cast<std::size_t>(xKind(place))].periodic;
    }
    bool periodicY(int place) const {
        return y.kinds[static_cast<std::size_t>(yKind(place))].periodic;
    }
    /// The place that is inside on all sides, -1 where there is none.
    int inside() const;

    BlockFrame blocks;
    int across, down;
    AxisKinds x, y;
};

} // namespace bastewright::points
