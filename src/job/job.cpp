#include "job/job.h"

namespace bastewright {

Rect topRect(const Top& top) {
    const auto largest = [](const std::vector<Length>& readings) {
        return readings.empty() ? Length{} : *std::max_element(readings.begin(), readings.end());
    };
    return {Length{}, Length{}, largest(top.width), largest(top.length)};
}

bool seamsAreSewn(const Job& job) {
    // Free-motion, single tacks and lines across the seams pass over seams anywhere, so keeping
    // pins off the seams gains nothing there; undecided keeps the choice open.
    return job.quilting.method == Quilting::Method::inTheDitch ||
           job.quilting.method == Quilting::Method::undecided;
}

} // namespace bastewright
