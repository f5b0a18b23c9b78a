#include "planners/crew/profile.h"

#include <algorithm>
#include <cassert>

namespace bastewright::crew {

Profile::Profile(std::span<const int> capacity)
    : capacity_(capacity.begin(), capacity.end()) {
    clear();
}

void Profile::clear() {
    times_.assign(1, 0);
    used_.assign(capacity_.size(), 0);
}

std::size_t Profile::stepAt(int time) const {
    // Work is mostly added near the end.
    std::size_t i = times_.size() - 1;
    while (times_[i] > time)
        --i;
    return i;
}

int Profile::earliest(int ready, int seconds, std::span<const int> demand) const {
    const std::size_t tools = capacity_.size();
    std::size_t i = stepAt(ready);
    int start = ready;
    while (i < times_.size() && times_[i] < start + seconds) {
        const int* used = used_.data() + i * tools;
        bool fits = true;
        for (std::size_t k = 0; k < tools; ++k)
            fits = fits && used[k] + demand[k] <= capacity_[k];
        ++i;
        if (!fits) {
            assert(i < times_.size() && "more tools are asked for than there are");
            start = times_[i];
        }
    }
    return start;
}

std::size_t Profile::split(int time) {
    const std::size_t i = stepAt(time);
    if (times_[i] == time)
        return i;
    const std::size_t tools = capacity_.size();
    const std::vector<int> row(used_.begin() + static_cast<std::ptrdiff_t>(i * tools),
                               used_.begin() + static_cast<std::ptrdiff_t>((i + 1) * tools));
    times_.insert(times_.begin() + static_cast<std::ptrdiff_t>(i + 1), time);
    used_.insert(used_.begin() + static_cast<std::ptrdiff_t>((i + 1) * tools), row.begin(),
                 row.end());
    return i + 1;
}

void Profile::take(int start, int seconds, std::span<const int> demand) {
    if (seconds <= 0)
        return;
    const std::size_t from = split(start), to = split(start + seconds);
    for (std::size_t i = from; i < to; ++i)
        for (std::size_t k = 0; k < capacity_.size(); ++k)
            used_[i * capacity_.size() + k] += demand[k];
}

} // namespace bastewright::crew
