#include "planners/points/stitch_rows.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::points {
namespace {

/// Places from one end of a side to the other, in steps of the raster.
struct Spread {
    std::vector<int> places;
    int apart = 0; ///< the distance that most neighbours have, the smaller of two
};

/// As few as lie at most `most` apart and never nearer than `least`, `inside` from both ends; one
/// in the middle where there is no room for two.
Spread spread(double length, double inside, double most, double least, double fine) {
    const int first = int(std::ceil(inside / fine - 1e-9));
    const int last = int(std::floor((length - inside) / fine + 1e-9));
    const int room = last - first, nearest = int(std::ceil(least / fine - 1e-9));
    if (room < nearest)
        return {{int(std::lround(length / 2 / fine))}, 0};
    const int widest = int(std::ceil(most / fine - 1e-9));
    int gaps = (room + widest - 1) / widest;
    if (gaps > 1 && room / gaps < nearest)
        --gaps;
    Spread out;
    std::map<int, int> often;
    for (int i = 0; i <= gaps; ++i) {
        // The wider gaps are spread among the others, alike from both ends.
        out.places.push_back(first + int((std::int64_t(room) * 2 * i + gaps) / (2 * gaps)));
        if (i > 0)
            ++often[out.places[std::size_t(i)] - out.places[std::size_t(i) - 1]];
    }
    out.apart = std::ranges::max_element(often, {}, [](const auto& g) { return g.second; })->first;
    return out;
}

RowLayout rowsAlong(const Rules& rules, double alongRow, PinRows::Along along) {
    const RowFrame frame{rules, along};
    const double fine = frame.fine(), edge = rules.pin.edge();
    const Spread marks =
        spread(frame.across(), edge + rules.pin.halfLength(), alongRow, rules.gap, fine);
    // Midway between two rows the edge beside their ends has to be in reach of both.
    const double far =
        std::max(marks.places.front() * fine, frame.across() - marks.places.back() * fine);
    const double half = std::sqrt(std::max(0.0, squared(rules.radius) - squared(far)));
    const double apart = std::clamp(2 * half - fine, rules.gap, rules.spacing);
    const Spread rows = spread(frame.down(), edge, apart, rules.gap, fine);
    RowLayout out;
    out.choice.along = along;
    out.choice.gap = rows.apart * fine;
    out.choice.step = marks.apart * fine;
    out.choice.marks = {marks.places, marks.places};
    out.choice.rows = rows.places;
    for (const int row : rows.places) {
        FittedRow& line = out.rows.emplace_back();
        for (const int mark : marks.places)
            line.push_back({mark, {mark * fine, row * fine}});
    }
    return out;
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
