#include "planners/points/pin_rows_of.h"

#include <algorithm>
#include <map>
#include <optional>

namespace bastewright::points {
namespace {

/// Of the distances that are often there, at least a quarter as often as the usual one and one time
/// in twenty, the nearest to what was aimed at: seams move rows and marks, and what is said is what
/// people will find.
Length oftenNear(Length aimed, const std::vector<std::vector<Length>>& lines) {
    std::map<Length, int> times;
    for (const auto& line : lines)
        for (std::size_t i = 1; i < line.size(); ++i)
            ++times[line[i] - line[i - 1]];
    int most = 0, all = 0;
    for (const auto& [distance, n] : times) {
        most = std::max(most, n);
        all += n;
    }
    std::optional<Length> best;
    for (const auto& [distance, n] : times)
        if (n * 4 >= most && (n * 20 >= all || n == most) &&
            (!best || abs(distance - aimed) < abs(*best - aimed)))
            best = distance;
    return best.value_or(aimed);
}

} // namespace

Length rasterLength(int steps, Unit unit) {
    return steps * (unit == Unit::inch ? Length::inch64ths(8) : Length::nanometres(2'500'000));
}

PinRows pinRowsOf(const RowLayout& layout, const Rules& rules, Unit unit, const Spots& pins) {
    const RowFrame frame{rules, layout.choice.along};
    const auto lengths = [&](const std::vector<int>& of) {
        std::vector<Length> out;
        for (const int i : of)
            out.push_back(rasterLength(i, unit));
        return out;
    };
    std::vector<Point> left;
    for (const Spot s : pins)
        left.push_back(exact(s));
    std::ranges::sort(left);
    PinRows out;
    out.along = layout.choice.along;
    out.ribbons = {lengths(layout.choice.marks.odd), lengths(layout.choice.marks.even),
                   lengths(layout.choice.rows)};
    for (std::size_t i = 0; i < layout.rows.size(); ++i) {
        PinRow row{out.ribbons.side[i], {}, {}};
        for (const FittedPin& pin : layout.rows[i]) {
            const Point at = exact(frame.toTop(pin.at));
            const auto found = std::ranges::lower_bound(left, at);
            if (found == left.end() || *found != at)
                continue;
            left.erase(found);
            const Length mark = rasterLength(pin.mark, unit);
            row.places.push_back(mark);
            if (at != placeIn(out.along, mark, row.at))
                row.aside.push_back({mark, at});
        }
        std::ranges::sort(row.places);
        std::ranges::sort(row.aside);
        out.lines.push_back(std::move(row));
    }
    std::vector<std::vector<Length>> rows(1), places;
    for (const PinRow& row : out.lines) {
        rows.front().push_back(row.at);
        places.push_back(row.places);
    }
    out.gap = oftenNear(Length::nearestInches(layout.choice.gap), rows);
    out.step = oftenNear(Length::nearestInches(layout.choice.step), places);
    out.singles = std::move(left);
    out.slack = Length::inch64ths(slack64ths(pins, rules));
    return out;
}

} // namespace bastewright::points
