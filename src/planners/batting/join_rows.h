#pragma once

#include "planners/batting/join_cost.h"
#include "planners/batting/join_search.h"

#include <array>

namespace bastewright::batting {

/// Sides of the batting that a part reaches.
enum Sides : unsigned { kLeft = 1, kRight = 2, kHead = 4, kFoot = 8 };

/// A tree of joins with rows of any number of parts.
struct Row {
    int item = -1;
    bool turned = false;
    bool beside = false; ///< its parts lie side by side
    std::vector<Row> parts;
    std::int64_t most[2] = {0, 0}, least[2] = {0, 0}; ///< width, length
    Cost cost[2];
    std::array<int, 16> ends{}; ///< fewest ends of joins on the batting's edges, by `Sides`

    int axis() const { return beside ? 0 : 1; } ///< along which its parts follow
    Sides firstSide() const { return beside ? kLeft : kHead; }
    Sides lastSide() const { return beside ? kRight : kFoot; }
    unsigned acrossSides() const { return beside ? kHead | kFoot : kLeft | kRight; }
};

Row rowOf(const JoinTree& tree, int node);

/// Which parts of a row are its first and its last, so that the fewest joins end on an edge of the
/// batting: there each reaches further, by half an overlap.
struct Ends {
    std::size_t first = 0, last = 1;
    int count = 0;
};
Ends endsOf(const Row& row, unsigned sides);

/// How a row shares its extent where its parts have more: the shortest joins, the most even, or the
/// other way round.
enum class Share { shortest, even, reverse };

/// A row and its parts given their sizes.
struct Sized {
    const Row* row = nullptr;
    std::int64_t size[2] = {0, 0};
    std::vector<Sized> parts;
    std::vector<std::size_t> order; ///< of the parts, from the left or the head
};

/// Every row as its turn in `shares` says, from the whole downwards, the last for all others. No
/// piece shows less than 3 in where it need not.
Sized sized(const Row& row, std::int64_t width, std::int64_t length,
            const std::vector<Share>& shares);

/// True where no row has anything to share.
bool rigid(const Sized& sized);

} // namespace bastewright::batting
