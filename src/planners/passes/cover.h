#pragma once

#include "planners/passes/order.h"

#include <stop_token>

namespace bastewright {

/// A window that may be used, with where the table lies along both axes. Where the table is too
/// deep for anybody to reach its middle, the window may be a strip along one side.
struct Candidate {
    Window window;
    Point at;         ///< the table's low corner
    Rect unreached{}; ///< of the window, where that is too much to be pulled across; empty: nothing
};

/// Windows worth looking at: chains outward from the ends, from the middle, and from those that
/// hold the middle, along both axes; strips along the sides too where the table is too deep.
std::vector<Candidate> candidates(const Board& board, const Lie& lie, const FirstPass& first);

/// Rows of windows, or columns: one chain outward along each axis, and bricks, where only the row
/// (or column) of the first window has to hold the middle. Fewest first.
std::vector<std::vector<Window>> grids(const Board& board, const Lie& lie, const FirstPass& first);

/// The first window and four arms round it, each of which ends at the side of the next, so that
/// only the last has basted area at its end; either way round.
std::vector<std::vector<Window>> pinwheels(const Board& board, const Lie& lie, const Window& first);

/// For a table that is too deep: a strip through the middle, then the table round it, then whatever
/// of the four ends and corners is left.
std::vector<std::vector<Window>> roundTheMiddle(const Board& board, const Lie& lie);

/// The sequence of the fewest candidates, up to `most`, that cover the top, and every place where
/// two passes may meet together with the anchor beside it by one window; one of them may be first.
/// Up to ten by exact search over the place that the fewest windows cover, which ends after `nodes`
/// sets for each number, or when enough sets were found, the more the fewer windows they have;
/// more, or where that finds none, by weighing in so many steps (see coversByWeighing). Then for an
/// order of each set. A stop ends it.
struct CoverSearch {
    int nodes = 6'000;
    int steps = 4'000;
    std::stop_token stop{};
};
struct FewestCover {
    std::vector<Sequence> sequences; ///< of the fewest, the cheapest first
    std::size_t least = 1;           ///< no set of fewer candidates covers everything
};
FewestCover fewestCover(const Board& board, const Lie& lie, const FirstPass& first,
                        const std::vector<Candidate>& candidates, std::size_t most,
                        const CoverSearch& limits = {});

} // namespace bastewright
