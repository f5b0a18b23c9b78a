#pragma once

#include "planners/points/row_front.h"
#include "planners/points/row_polish.h"

namespace bastewright::points {

/// Polishes choices in rounds, those that promise most going on to the next and longer one.
class RowRounds {
public:
    /// So many points a bare corner is worth: three of them lie round a hole, which a point fills;
    /// as it has to be found without a ribbon, it is worth two in a row.
    static constexpr double kCornerWorth = 0.7;

    RowRounds(const Rules& rules, ClearPlaces& places, std::stop_token stop);

    /// The cheapest that comes of any of these (one at least), or one that takes hardly more and
    /// leaves hands more room: a point more for any slack, a hundredth more for one that is told.
    RowStart best(std::vector<RowStart> starts, int shifts);
    void polish(RowStart& start, RowPolish::Effort effort);

private:
    RowStart loosest(RowStart best, std::vector<RowStart> complete, RowPolish::Effort effort);
    int loosen(RowStart& start, RowPolish::Effort effort);

    const Rules& rules_;
    ClearPlaces& places_;
    std::stop_token stop_;
};

} // namespace bastewright::points
