#pragma once

#include "planners/points/row_fit.h"

#include <stop_token>

namespace bastewright::points {

/// Shifts single rows, and single marks of both ribbons, a little while that leaves fewer places
/// bare.
///
/// What a shift changes lies within a radius of the pins that moved, so that only that part of the
/// top is looked at. Shifts that change nothing are taken, too: what is bare moves on until it
/// closes.
class RowPolish {
public:
    RowPolish(const Rules& rules, const RowFrame& frame, ClearPlaces& places);

    /// At most so many shifts are tried. Returns the corners left bare.
    int polish(RowChoice& choice, int shifts, Dice& dice, std::stop_token stop);
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
    bool isBetter(const Field& part);

    const Rules& rules_;
    const RowFrame& frame_;
    RowFit fit_;
    int gap_;
    Spots bare_;
    std::vector<Changed> changed_;
};

} // namespace bastewright::points
