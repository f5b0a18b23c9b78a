#include "planners/points/stitch_rows.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

/// Places from one end of a side to the other, in steps of the raster: as few as lie at most `most`
/// apart and never nearer than `least`, `inside` from both ends; one in the middle where there is
/// no room for two.
std::vector<int> spread(double length, double inside, double most, double least, double fine) {
    const int first = int(std::ceil(inside / fine - 1e-9));
    const int last = int(std::floor((length - inside) / fine + 1e-9));
    const int room = last - first, nearest = int(std::ceil(least / fine - 1e-9));
    if (room < nearest)
        return {int(std::lround(length / 2 / fine))};
    const int widest = int(std::ceil(most / fine - 1e-9));
    int gaps = (room + widest - 1) / widest;
    if (gaps > 1 && room / gaps < nearest)
        --gaps;
    // The wider gaps are spread among the others, alike from both ends.
    std::vector<int> out;
    for (int i = 0; i <= gaps; ++i)
        out.push_back(first + int((std::int64_t(room) * 2 * i + gaps) / (2 * gaps)));
    return out;
}

/// The mean distance of neighbours, in steps of the raster; 0 where there is one place.
double meanGap(const std::vector<int>& places) {
    return places.size() < 2 ? 0
                             : double(places.back() - places.front()) / double(places.size() - 1);
}

RowLayout rowsAlong(const Rules& rules, double alongRow, PinRows::Along along) {
    const RowFrame frame{rules, along};
    const double fine = frame.fine(), edge = rules.pin.edge();
    const std::vector<int> marks =
        spread(frame.across(), edge + rules.pin.halfLength(), alongRow, rules.gap, fine);
    // Midway between two rows the edge beside their ends has to be in reach of both.
    const double far = std::max(marks.front() * fine, frame.across() - marks.back() * fine);
    const double half = std::sqrt(std::max(0.0, squared(rules.radius) - squared(far)));
    const double apart = std::clamp(2 * half - fine, rules.gap, rules.spacing);
    const std::vector<int> rows = spread(frame.down(), edge, apart, rules.gap, fine);
    return straightRows(frame, {.along = along,
                                .gap = meanGap(rows) * fine,
                                .step = meanGap(marks) * fine,
                                .marks = {marks, marks},
                                .rows = rows});
}

} // namespace

RowLayout stitchRows(const Rules& rules, Length alongRow, std::optional<PinRows::Along> along) {
    using enum PinRows::Along;
    if (along)
        return rowsAlong(rules, alongRow.in(), *along);
    RowLayout across = rowsAlong(rules, alongRow.in(), width);
    RowLayout down = rowsAlong(rules, alongRow.in(), length);
    return down.pins() < across.pins() ? down : across;
}

} // namespace bastewright::points
