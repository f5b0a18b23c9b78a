#pragma once

#include "planners/points/clear_places.h"
#include "planners/points/row_choice.h"

namespace bastewright::points {

/// A pin where it really lies.
struct FittedPin {
    int mark = 0; ///< raster number of its mark
    Spot at;      ///< along the rows and down the side, in inches
    bool clear = true;
};
using FittedRow = std::vector<FittedPin>; ///< by their places along the row

/// Lays the pins of a choice, each beside its mark where a seam is in the way, and looks for places
/// they leave bare.
///
/// Judged like `holes`: an uncovered region has a corner where two circles round pins, or a circle
/// and an edge, cross outside all other circles. Goes row by row, so that a bad choice is given up
/// early.
class RowFit {
public:
    RowFit(const Rules& rules, const RowFrame& frame, ClearPlaces& places);

    /// Lays all rows and counts corners left bare, up to about `most`; beyond, rows may be missing.
    /// A mark whose pin would be too near another's is left out.
    int lay(const RowChoice& choice, int most);
    const std::vector<FittedRow>& rows() const { return rows_; }
    std::size_t pins() const;

    /// Corners left bare inside a part of the frame, looked for until there are more than `most`.
    /// Where the frame's own corners are in it, they count as well.
    Spots bareIn(const Field& part, int most);
    /// All that the last laying left bare.
    const Spots& bare() const { return bare_; }

    /// Where the pin of a mark goes.
    FittedPin placed(int mark, int row) const;
    /// True where another pin than `own` is nearer than the least distance.
    bool tooNear(std::size_t row, Spot at, const FittedPin* own) const;
    /// Another row in place of this one, for a trial; it must be in order.
    void exchange(std::size_t row, FittedRow& with) { rows_[row].swap(with); }

private:
    void layRow(const RowChoice& choice, std::size_t row);
    void look(const Field& part, std::size_t row, int most);
    void lookAtCorners(const Field& part);
    void gather(std::size_t row, Spot at);
    void corner(const Field& part, Spot at, const FittedPin* other);

    const Rules& rules_;
    const RowFrame& frame_;
    ClearPlaces& places_;
    Field field_;
    std::vector<FittedRow> rows_;
    std::vector<const FittedPin*> near_;
    Spots bare_, found_;
};

} // namespace bastewright::points
