#pragma once

#include "plan/pin_rows.h"
#include "planners/points/rules.h"

namespace bastewright::points {

/// The top as its rows see it: `u` along a row, `v` down the side, in inches from the head-left
/// corner. Marks and rows stand on a raster of `fine` (eighths of an inch, quarters of a
/// centimetre; wider where the spacing is over 16 in).
class RowFrame {
public:
    RowFrame(const Rules& rules, PinRows::Along along);

    PinRows::Along along() const { return along_; }
    double across() const { return across_; } ///< length of a row
    double down() const { return down_; }
    double fine() const { return fine_; }
    Field field() const { return {0, 0, across_, down_}; }

    Spot toTop(Spot uv) const { return along_ == PinRows::Along::width ? uv : Spot{uv.y, uv.x}; }
    Spot fromTop(Spot xy) const { return toTop(xy); }

    /// Seams that cross the rows, or run along with them, over at least two fifths of the top.
    const std::vector<double>& crossing() const { return crossing_; }
    const std::vector<double>& alongside() const { return alongside_; }
    /// No seams but those.
    bool straight() const { return straight_; }

private:
    PinRows::Along along_;
    double across_, down_, fine_;
    std::vector<double> crossing_, alongside_;
    bool straight_ = true;
};

/// Where on one axis a whole line of points may stand.
class ClearLines {
public:
    /// Raster places at least `room` from every seam and `edge` from both ends.
    ClearLines(double length, double fine, const std::vector<double>& seams, double room,
               double edge);
    /// Number of the raster place nearest to `at`, the lower of two; -1 where there is none.
    int nearest(double at) const;
    bool allowed(int i) const {
        return i >= 0 && i < int(near_.size()) && near_[std::size_t(i)] == i;
    }
    int first() const { return first_; }
    int last() const { return last_; }
    bool any() const { return first_ >= 0; }

private:
    double fine_;
    std::vector<int> near_; ///< of each raster place, the nearest that is allowed
    int first_ = -1, last_ = -1;
};

} // namespace bastewright::points
