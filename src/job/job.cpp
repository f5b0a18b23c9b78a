#include "job/job.h"

#include <algorithm>
#include <cmath>

namespace bastewright {

Rect topRect(const Top& top) {
    const auto largest = [](const std::vector<Length>& readings) {
        return readings.empty() ? Length{} : *std::max_element(readings.begin(), readings.end());
    };
    return {Length{}, Length{}, largest(top.width), largest(top.length)};
}

Rect topEnvelope(const Top& top) {
    const Rect area = topRect(top);
    const Length width = area.width(), length = area.length();
    if (top.diagonals.size() != 2 || width <= Length{} || length <= Length{})
        return area;
    const double d = top.diagonals[0].in(), e = top.diagonals[1].in();
    const double lean = std::abs(d * d - e * e) / 4;
    return {Length{}, Length{}, width + Length::nearestInches(lean / width.in()),
            length + Length::nearestInches(lean / length.in())};
}

bool seamsAreSewn(const Job& job) {
    // Free-motion, single tacks and lines across the seams pass over seams anywhere, so keeping
    // pins off the seams gains nothing there; undecided keeps the choice open.
    return job.quilting.method == Quilting::Method::inTheDitch ||
           job.quilting.method == Quilting::Method::undecided;
}

} // namespace bastewright
