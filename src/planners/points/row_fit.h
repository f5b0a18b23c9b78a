#pragma once

#include "planners/points/clear_places.h"
#include "planners/points/row_choice.h"

#include <limits>

namespace bastewright::points {

/// A pin where it really lies.
struct FittedPin {
    int mark = 0; ///< raster number of its mark
    Spot at;      ///< along the rows and down the side, in inches
    bool clear = true;
};
using FittedRow = std::vector<FittedPin>; ///< by their places along the row

/// A corner of a place that the rows leave bare.
struct BareCorner {
    Spot at;
    double cost = 0; ///< a half, and by how many inches it is out of reach, an inch at most
};

/// Lays the pins of a choice, each beside its mark where a seam is in the way, and looks for places
/// they leave bare.
///
/// Judged like `holes`: an uncovered region has a corner where two circles round pins, or a circle
/// and an edge, cross outside all other circles. Goes row by row, so that a bad choice is given up
/// early.
class RowFit {
public:
    RowFit(const Rules& rules, const RowFrame& frame, ClearPlaces& places);

    /// Lays all rows and counts corners left bare. Given up, with `kTooMany`, as soon as there are
    /// so many that in the end it would be more than `most`; then rows are missing.
    /// A mark whose pin would be too near another's is left out.
    static constexpr int kTooMany = std::numeric_limits<int>::max();
    int lay(const RowChoice& choice, int most = kTooMany);
    const std::vector<FittedRow>& rows() const { return rows_; }
    std::size_t pins() const;

    /// Corners left bare inside a part of the frame, looked for until they cost more than `most`.
    /// Where the frame's own corners are in it, they count as well.
    const std::vector<BareCorner>& bareIn(const Field& part, double most);
    /// All that the last laying left bare.
    const std::vector<BareCorner>& bare() const { return bare_; }

    /// Where the pin of a mark goes.
    FittedPin placed(int mark, int row) const;
    /// True where another pin than `own` is nearer than the least distance.
    bool tooNear(std::size_t row, Spot at, const FittedPin* own) const;
    /// Another row in place of this one, for a trial; it must be in order.
    void exchange(std::size_t row, FittedRow& with) { rows_[row].swap(with); }

private:
    void layRow(const RowChoice& choice, std::size_t row);
    void look(const Field& part, std::size_t row, double most);
    void lookAtCorners(const Field& part);
    void gatherFrom(std::size_t row, double x);
    void gather(Spot at, const FittedPin* own);
    void corner(const Field& part, Spot at, std::size_t other);

    const Rules& rules_;
    const RowFrame& frame_;
    ClearPlaces& places_;
    Field field_;
    std::vector<FittedRow> rows_;
    /// Of a row and those beside it, what a look that goes along the row has still before it.
    struct Ahead {
        FittedRow::const_iterator from, end;
    };
    std::vector<Ahead> ahead_;
    Spots near_;             ///< other pins within two radii of the one that is looked at
    std::size_t holder_ = 0; ///< of these, the one that held the last corner
    std::vector<BareCorner> bare_, found_;
    double cost_ = 0; ///< of what was found
};

} // namespace bastewright::points
