#include "planners/passes/table_places.h"

#include <algorithm>

namespace bastewright {
namespace {

Length preferred(const AxisChoice& c) {
    if (!c.before)
        return c.places.middle();
    if (c.lo > 0 && c.hi == c.lines.last())
        return c.places.lo;
    if (c.hi < c.lines.last() && c.lo == 0)
        return c.places.hi;
    return std::clamp(*c.before, c.places.lo, c.places.hi);
}

/// Nearest to the middle of the places; nothing where the lines lie closer than the middle of the
/// table that is out of reach is wide.
std::optional<Length> betweenLines(const AxisChoice& c) {
    if (c.reach <= Length{} || c.size <= 2 * c.reach)
        return {};
    const Length middle = c.places.middle();
    std::optional<Length> best;
    for (std::size_t k = 0; k + 1 < c.lines.at.size(); ++k) {
        const Interval here =
            intersection(c.places, {c.lines.at[k] - c.reach, c.lines.at[k + 1] - c.size + c.reach});
        if (here.hi < here.lo)
            continue;
        const Length at = std::clamp(middle, here.lo, here.hi);
        if (!best || abs(at - middle) < abs(*best - middle))
            best = at;
    }
    return best;
}

} // namespace

void TablePlaces::add(Length at) {
    if (std::find(begin(), end(), at) == end())
        at_[count_++] = at;
}

TablePlaces tablePlaces(const AxisChoice& c) {
    TablePlaces out;
    for (const Length at : {preferred(c), c.places.lo, c.places.hi, c.places.middle(),
                            std::clamp((c.lines.cuts[c.lo].at + c.lines.cuts[c.hi].at - c.size) / 2,
                                       c.places.lo, c.places.hi)})
        out.add(at);
    if (const auto between = betweenLines(c))
        out.add(*between);
    return out;
}

} // namespace bastewright
