#include "planners/points/pin_rows_of.h"

#include <algorithm>

namespace bastewright::points {
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
    out.gap = Length::nearestInches(layout.choice.gap);
    out.step = Length::nearestInches(layout.choice.step);
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
    out.singles = std::move(left);
    out.slack = Length::inch64ths(slack64ths(pins, rules));
    return out;
}

} // namespace bastewright::points
