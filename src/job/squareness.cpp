#include "job/squareness.h"

#include <algorithm>
#include <numeric>

namespace bastewright {

Length spread(const std::vector<Length>& readings) {
    if (readings.empty())
        return {};
    const auto [least, most] = std::ranges::minmax_element(readings);
    return *most - *least;
}

Squareness squareness(const Top& top) {
    Squareness out{spread(top.width), spread(top.length), {}, true};
    if (top.diagonals.size() == 2 && !top.width.empty()) {
        const Length all = std::accumulate(top.width.begin(), top.width.end(), Length{});
        const double mean = all.in() / double(top.width.size());
        const double first = top.diagonals[0].in(), second = top.diagonals[1].in();
        if (mean > 0)
            out.lean = Length::nearestInches((first - second) * (first + second) / (4 * mean));
    }
    out.square = out.widthSpread <= kSquareEnough && out.lengthSpread <= kSquareEnough &&
                 abs(out.lean.value_or(Length{})) <= kSquareEnough;
    return out;
}

} // namespace bastewright
