#pragma once

#include "planners/backing/column.h"
#include "planners/backing/layout.h"

#include <optional>
#include <vector>

namespace bastewright::backing {

/// A strip of the backing from one outer edge to the other.
struct Strip {
    int bolt = -1;      ///< of its length; -1 for the column
    Length most;        ///< widest it can be cut
    bool flank = false; ///< one half of a split length
    auto operator<=>(const Strip&) const = default;
};

/// A layout with its seams placed.
struct Arrangement {
    std::vector<Strip> strips; ///< from the left, or from the head
    std::vector<Length> seams; ///< between them
    ColumnJoins joins;         ///< inside the column
};

/// Orders the strips and places the seams: 2 in off the quilt's centre line (unless a centre seam
/// is allowed) and, where `keepAway`, 2 in off the lines of the problem that run along the seams. A
/// column lies off the middle and off the edges, flanks lie outside, equal strips face each other
/// where they can. Nothing where the seams have no place.
std::optional<Arrangement> arrange(const Problem& problem, const std::vector<Bolt>& bolts,
                                   const Layout& layout, bool keepAway);

/// Least widths, allowances included, of a column that makes the lengths of a layout (its own
/// `column` apart) fit with every seam in its place, lines left out: one that can lie inside, and
/// where it is narrower one that lies along the edge.
struct ColumnWidth {
    Length width;
    bool outside = false;
};
std::vector<ColumnWidth> columnWidths(const Problem& problem, const std::vector<Bolt>& bolts,
                                      const Layout& layout);

/// The finished panels and the cuts that give them, in order of cutting.
struct Pieces {
    std::vector<BackingPanel> panels;
    std::vector<ClothCut> cuts;
};
Pieces piecesOf(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout,
                const Arrangement& arrangement);

} // namespace bastewright::backing
