#pragma once

#include "planners/points/row_frame.h"
#include "planners/points/strip_cover.h"

namespace bastewright::points {

/// How a pin lies in its row, for rows whose lines keep clear of the seams as a whole.
enum class Lie { along, across, aslant, anyhow };

/// One way to mark both ribbons: a mark every `step`, the even rows half a step over, each moved to
/// where it is clear, with a mark more or one moved outward where a row would begin or end too
/// late.
struct RibbonOption {
    RibbonMarks marks;
    double step = 0;
    int level = 0;                    ///< how plain a figure the step is: see `Measures`
    double widest = 0;                ///< rows may lie so far apart
    double edgeOdd = 0, edgeEven = 0; ///< and so far from the edge beside them
};

/// One way to lay the rows: one every `gap`, each moved to where it is clear.
struct RowsOption {
    std::vector<int> rows;
    double gap = 0;
    int level = 0;
    double widest = 0, first = 0,
           last = 0; ///< greatest distance of two; from the head; from the foot
};

/// The figures a step or a gap is chosen from, the plainest first: halves, quarters, eighths of an
/// inch; halves and quarters of a centimetre; halves and quarters of a person's own measure.
struct Measures {
    std::vector<double> units; ///< inches, by level
};

/// Everything the search over rows chooses from, on one frame, for pins that lie in one way.
struct RowOptions {
    std::vector<RibbonOption> ribbons; ///< as for the rows
    std::vector<RowsOption> rows;      ///< none that another is as good as in all respects
};

/// How much is tried: `quick` leaves out the finest figures and most beginnings; `all` keeps
/// options that another is as good as, for tops where single pins will have to move.
struct RowEffort {
    bool quick = false, all = false;
};

RowOptions rowOptions(const Rules& rules, const RowFrame& frame, Lie lie, const Measures& measures,
                      RowEffort effort);

} // namespace bastewright::points
