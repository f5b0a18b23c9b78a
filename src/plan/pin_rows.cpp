#include "plan/pin_rows.h"

#include <algorithm>

namespace bastewright {

Point placeIn(PinRows::Along along, Length onRow, Length side) {
    return along == PinRows::Along::width ? Point{onRow, side} : Point{side, onRow};
}

const std::vector<Length>& marksOf(const PinRows& rows, std::size_t line) {
    return line % 2 == 0 ? rows.ribbons.odd : rows.ribbons.even;
}

RowMarks::RowMarks(const PinRows& rows) {
    for (std::size_t i = 0; i < rows.lines.size(); ++i) {
        const PinRow& row = rows.lines[i];
        const std::vector<Length>& marks = marksOf(rows, i);
        for (const Length place : row.places) {
            const auto mark = std::ranges::lower_bound(marks, place);
            if (mark == marks.end() || *mark != place)
                continue;
            const auto aside = std::ranges::find(row.aside, place, &PinAside::mark);
            const Point at =
                aside != row.aside.end() ? aside->to : placeIn(rows.along, place, row.at);
            marks_.emplace(at, RowMark{int(i) + 1, int(mark - marks.begin()) + 1});
        }
    }
}

std::optional<RowMark> RowMarks::of(Point at) const {
    const auto it = marks_.find(at);
    return it == marks_.end() ? std::optional<RowMark>{} : it->second;
}

} // namespace bastewright
