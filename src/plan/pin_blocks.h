#pragma once

#include "measures/geometry.h"

#include <vector>

/// Pins (or dots) by the blocks: one figure, its own mirror image in every direction, in each
/// block.
namespace bastewright {

/// A line of pins along a side of the top.
struct EdgeLine {
    Side side = Side::head;
    Length in;                  ///< from that side
    std::vector<Length> places; ///< along it, from the left or from the head
    auto operator<=>(const EdgeLine&) const = default;
};

struct PinBlocks {
    Length block;               ///< its side, without sashing
    std::vector<Point> inBlock; ///< from the block's head-left corner, by y, then x
    int perStrip = 0; ///< spread evenly along the middle of every sashing strip between two blocks
    bool posts = false; ///< one in the middle of every post, where strips meet
    std::vector<EdgeLine> edges;
    std::vector<Point> leftOut; ///< places of all these where a further seam leaves no room
    std::vector<Point> singles; ///< for what is still bare
    auto operator<=>(const PinBlocks&) const = default;
};

} // namespace bastewright
