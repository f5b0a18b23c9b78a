#include "planners/points/row_front.h"

#include <algorithm>
#include <limits>

namespace bastewright::points {

int RowFront::mostBare(std::size_t pins) const {
    if (starts_.empty())
        return std::numeric_limits<int>::max();
    const auto more = starts_.upper_bound(pins);
    return more == starts_.begin() ? mostBare_
                                   : std::min(mostBare_, std::prev(more)->second.bare - 1);
}

void RowFront::offer(RowStart start) {
    const auto pins = std::size_t(start.pins);
    if (start.bare > mostBare(pins))
        return;
    auto at = starts_.lower_bound(pins);
    while (at != starts_.end() && at->second.bare >= start.bare)
        at = starts_.erase(at);
    starts_.insert_or_assign(pins, std::move(start));
}

std::vector<RowStart> RowFront::cheapest(double worth, std::size_t most) const {
    std::vector<RowStart> out;
    for (const auto& [pins, start] : starts_)
        out.push_back(start);
    sortByCost(out, worth);
    if (out.size() > most)
        out.resize(most);
    return out;
}

void sortByCost(std::vector<RowStart>& of, double worth) {
    std::ranges::stable_sort(of, {}, [&](const RowStart& s) { return s.cost(worth); });
}

} // namespace bastewright::points
