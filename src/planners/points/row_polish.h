#pragma once

#include "planners/points/row_fit.h"

#include <stop_token>

namespace bastewright::points {

/// Shifts single rows, and single marks of both ribbons, a little while that leaves fewer places
/// bare.
///
/// What a shift changes lies within a radius of the pins that moved, so that only that part of the
/// top is looked at. While there is heat, shifts that leave more bare are taken, too, the less
/// often the more they do: simulated annealing (Kirkpatrick, Gelatt and Vecchi, Science 220, 1983).
class RowPolish {
public:
    RowPolish(const Rules& rules, const RowFrame& frame, ClearPlaces& places);

    struct Effort {
        int shifts = 0;
        double heat = 0; ///< at the beginning, as a cost of bare corners; none in the last fifth
    };
    /// Ends early where nothing is left bare. Returns the corners left bare.
    int polish(RowChoice& choice, Effort effort, Dice& dice, std::stop_token stop);
    const RowFit& fit() const { return fit_; }

private:
    struct Changed {
        std::size_t row;
        FittedRow before;
    };
    void shiftRow(RowChoice& choice, std::size_t row, int by);
    void shiftMark(RowChoice& choice, bool odd, std::size_t mark, int by);
    bool layRowAt(const RowChoice& choice, std::size_t row, int at, Field& part);
    bool layMarkAt(const RowChoice& choice, std::size_t row, int mark, int to, Field& part);
    void takeBack();
    bool isGood(const Field& part);
    int last(double size) const; ///< place of a row or mark as near to the far edge as is allowed

    const Rules& rules_;
    const RowFrame& frame_;
    RowFit fit_;
    int gap_;
    int first_;        ///< place of a row or mark as near to the edge as is allowed
    double worse_ = 0; ///< so much dearer a shift may be
    std::vector<BareCorner> bare_;
    std::vector<Changed> changed_;
};

} // namespace bastewright::points
