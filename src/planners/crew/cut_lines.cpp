#include "planners/crew/cut_lines.h"

#include <algorithm>
#include <set>

namespace bastewright::crew {

std::vector<Length> cutLines(Interval area, std::span<const PlacedPoint> points, bool alongX,
                             Length spacing) {
    std::vector<Length> at;
    for (const PlacedPoint& p : points)
        at.push_back(alongX ? p.at.x : p.at.y);
    std::ranges::sort(at);
    struct Gap {
        Length size, middle;
    };
    std::vector<Gap> gaps;
    for (std::size_t k = 1; k < at.size(); ++k)
        if (at[k] > at[k - 1])
            gaps.push_back({at[k] - at[k - 1], at[k - 1] + (at[k] - at[k - 1]) / 2});
    // The widest first; none so near to another that what lies between is no row.
    std::ranges::stable_sort(gaps, std::greater{}, &Gap::size);
    const Length apart = spacing * 35 / 100;
    std::set<Length> lines;
    for (const Gap& g : gaps) {
        const auto after = lines.lower_bound(g.middle);
        const bool clear = (after == lines.end() || *after - g.middle >= apart) &&
                           (after == lines.begin() || g.middle - *std::prev(after) >= apart);
        if (clear && g.middle > area.lo && g.middle < area.hi)
            lines.insert(g.middle);
    }
    lines.insert(area.lo);
    lines.insert(area.hi);
    return {lines.begin(), lines.end()};
}

} // namespace bastewright::crew
