#pragma once

#include "planners/crew/share_out.h"

#include <map>

/// Where everybody belongs round a table, all day wherever the way of working allows it
/// (docs/computation/crew.md, "Places"). In the table's own frame: the quilt's axes, origin at the
/// table's head-left corner.
namespace bastewright::crew {

/// One person's own part of a side.
struct Home {
    int person = 0; ///< index of the hand
    Side side = Side::head;
    Interval own;
    Length at; ///< the middle of the work in it
    auto operator<=>(const Home&) const = default;
};

struct TableSides {
    Length width, length; ///< of the whole surface as the quilt lies on it
    std::vector<Side> closed;
    Interval workX, workY; ///< where there is work in any pass
};

/// How far round the table somebody may go for their part: a step or two beyond their own, or
/// wherever nobody else belongs, or anywhere.
enum class Roaming { little, ownSides, everywhere };

/// Who belongs where: how many at each side, then people in this order round the table (head from
/// left to right, right side, foot from right to left, left side), `turn` places on. People of a
/// side share it by their paces. Nothing where somebody finds no room (24 in), has a wish (`side`)
/// that is not met, or a side is closed.
std::optional<std::vector<Home>> homesFor(const TableSides& table, const PerSide<int>& count,
                                          std::span<const int> people,
                                          std::span<const Helper* const> helpers, int turn,
                                          bool quiltLengthAlongLength);

/// The ways to spread so many people over the sides; `evenly` leaves out those in which one of two
/// opposite sides has two people more than its room asks for.
std::vector<PerSide<int>> spreads(const TableSides& table, int people, bool evenly);

/// Most who can stand round the table.
int roomFor(const TableSides& table);

/// Where a home's person may stand in a pass, in the quilt's frame of that pass.
Post postOf(const TableSides& table, const std::vector<Home>& homes, std::size_t k,
            const Helper& helper, const Rect& passTable, Roaming roaming);

/// Puts who sits back where they sat before; false where that is another side, or somebody else's
/// part of this one.
bool keepSeats(const TableSides& table, std::vector<Home>& homes,
               std::span<const Helper* const> helpers, const std::map<int, Length>& stood);

/// Place of a point on a side on the way round the table, from the head-left corner on, and the
/// length of that way.
Length onTheWayRound(const TableSides& table, Side side, Length at);
Length wayRound(const TableSides& table);
/// Between two places on the way, the shorter way.
Length walkBetween(const TableSides& table, Length a, Length b);

} // namespace bastewright::crew
