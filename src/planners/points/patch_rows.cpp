#include "planners/points/patch_rows.h"

#include <cmath>

namespace bastewright::points {
namespace {

/// The middles of as few equal parts of a line as are at most so wide, in steps of the raster.
std::vector<int> middles(double length, double most, double fine) {
    const int parts = std::max(1, int(std::ceil(length / most - 1e-9)));
    std::vector<int> out;
    for (int i = 0; i < parts; ++i)
        out.push_back(int(std::lround(length * (2 * i + 1) / (2 * parts) / fine)));
    return out;
}

} // namespace

RowLayout patchRows(const Rules& rules, std::optional<PinRows::Along> along) {
    const RowFrame frame{rules, along.value_or(PinRows::Along::width)};
    const double fine = frame.fine();
    const std::vector<int> marks = middles(frame.across(), rules.spacing, fine);
    const std::vector<int> rows = middles(frame.down(), rules.spacing, fine);
    return straightRows(frame, {.along = along.value_or(PinRows::Along::width),
                                .gap = frame.down() / double(rows.size()),
                                .step = frame.across() / double(marks.size()),
                                .marks = {marks, marks},
                                .rows = rows});
}

} // namespace bastewright::points
