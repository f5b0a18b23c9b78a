#pragma once

#include "measures/region.h"
#include "planners/passes/axis.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace bastewright {

/// The top as passes are planned on it: its points, and where it may be cut.
struct Board {
    AxisLines x, y;
    std::vector<Point> points;
    std::vector<int> before; ///< points before each cut of x and of y, row by row (see boardWith)
};

/// `before` counted.
Board boardWith(AxisLines x, AxisLines y, std::vector<Point> points);

/// A table under the quilt, whichever way the quilt lies.
struct Lie {
    AxisTable x, y;
    std::vector<Side> closed; ///< sides of the quilt where nobody can stand
    Length reach;             ///< the farthest that anybody gets
    bool floor = false;       ///< nothing is out of reach
    bool operator==(const Lie&) const = default;
};

bool isOpen(const Lie& lie, Side side);
std::vector<Side> openSides(const Lie& lie);

/// What a table covers in one pass at most: from cut to cut both ways.
struct Window {
    std::size_t x0 = 0, x1 = 0, y0 = 0, y1 = 0;
    auto operator<=>(const Window&) const = default;
};

Rect areaOf(const Board& board, const Window& window);

/// Cells between the cuts that some windows use.
struct Cells {
    std::vector<std::size_t> x, y; ///< cut indices, sorted, ends included; at most 64 cells across
    std::vector<int> points;       ///< in each cell, row by row
    std::size_t columns() const { return x.size() - 1; }
    std::size_t rows() const { return y.size() - 1; }
};

/// A set of cells: a bit a column, row by row.
using CellSet = std::vector<std::uint64_t>;

/// Nothing where the windows have more cuts than 64 columns take.
std::optional<Cells> cellsOf(const Board& board, const std::vector<Window>& windows);
CellSet cellsIn(const Cells& cells, const Window& window);
CellSet joined(CellSet set, const CellSet& more);
int pointsIn(const Cells& cells, const CellSet& set);
Region regionOf(const Board& board, const Cells& cells, const CellSet& set);

/// What is worked after the quilt, held, has been pulled so that the table's corner lies at `at`.
struct Pull {
    Window window;
    Point at;
};

/// One pass of a sequence.
struct Step {
    CellSet fresh;
    Point at; ///< the table's low corner
    /// What of `fresh` is out of reach from there, then what is beyond the field, one after
    /// another; a later one takes no more of what an earlier one has.
    std::vector<Pull> pulls{};
    int points = 0;

    Point endsAt() const { return pulls.empty() ? at : pulls.back().at; }
    /// Where the table lies while a point is worked.
    Point tableFor(const Board& board, Point point) const;
    /// The pull in which a point is worked; their number for what is worked before.
    std::size_t pullOf(const Board& board, Point point) const;
};

/// The pass that bastes what of a window is bare, if it can be worked: its points inside the field
/// and within reach (a middle of at most kPulledAcross apart), the anchor on the table along every
/// boundary with what is basted, and no row or column of the basted part broken afterwards. The
/// table's corner has to lie `within` this; `before` is where it lay, nothing for the first pass.
/// Of several places for the table the first that will do, new area at its edge, or with a `cost`
/// the cheapest of a few.
using StepCost =
    std::function<double(const Cells& cells, const Step& step, const std::optional<Point>& before)>;
std::optional<Step> stepInto(const Board& board, const Lie& lie, const Cells& cells,
                             const CellSet& basted, const Window& window,
                             const std::optional<Rect>& within, std::optional<Point> before,
                             const StepCost& cost = {});

} // namespace bastewright
