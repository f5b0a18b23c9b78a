#include "planners/points/cover_search.h"

#include <algorithm>

namespace bastewright::points {

void CoverSearch::Coverers::sort() {
    std::sort(fours.begin(), fours.end(), [](Four a, Four b) { return a.first < b.first; });
    std::size_t last = 0;
    for (std::size_t i = 1; i < fours.size(); ++i)
        if (fours[i].first == fours[last].first)
            fours[last].which |= fours[i].which;
        else
            fours[++last] = fours[i];
    fours.resize(last + 1);
    fours.shrink_to_fit();
}

} // namespace bastewright::points
