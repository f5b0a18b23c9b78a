#pragma once

#include "planners/points/row_fit.h"

#include <optional>
#include <stop_token>

namespace bastewright::points {

/// Rows on a whole top, every pin where it really lies.
struct RowLayout {
    RowChoice choice;
    std::vector<FittedRow> rows; ///< in the frame of the choice's direction
    int bare = 0;                ///< corners of places that the rows leave bare
    std::size_t pins() const;
};

/// The rows of a choice with a point at every mark, where nothing has to keep clear of anything.
RowLayout straightRows(const RowFrame& frame, RowChoice choice);

struct RowWish {
    std::optional<PinRows::Along>
        along; ///< nothing: whichever needs fewer points, along the width of two
    Measures measures;
    int effort = 1;
};

/// The rows with the fewest points that were found, of several about as good those with most slack;
/// nothing where the top is too small for rows.
///
/// Without seams the least over all figures, beginnings and ends that are tried (`coveringRows`).
/// With seams a sample of them is laid with every pin beside its seam, and the most promising are
/// polished.
std::optional<RowLayout> rowsFor(const Rules& rules, const RowWish& wish, std::stop_token stop);

/// So many sixty-fourths of an inch every point may be off before a place is out of reach, an inch
/// at most.
int slack64ths(const Spots& points, const Rules& rules);

} // namespace bastewright::points
