#include "planners/passes/order.h"

#include <algorithm>
#include <limits>

namespace bastewright {
namespace {

constexpr std::size_t kMostForExact = 10;

Length between(const Layout& layout, std::size_t a, std::size_t b) {
    return way(shiftBetween(layout.areas[a], layout.areas[b]));
}

/// Prim's least spanning tree.
Length spanningTree(const Layout& layout) {
    const std::size_t n = layout.areas.size();
    constexpr Length kFar = Length::nanometres(std::numeric_limits<std::int64_t>::max());
    std::vector<Length> nearest(n, kFar);
    std::vector<bool> in(n, false);
    nearest[0] = {};
    Length sum;
    for (std::size_t k = 0; k < n; ++k) {
        std::size_t next = n;
        for (std::size_t i = 0; i < n; ++i)
            if (!in[i] && (next == n || nearest[i] < nearest[next]))
                next = i;
        in[next] = true;
        sum += nearest[next];
        for (std::size_t i = 0; i < n; ++i)
            nearest[i] = std::min(nearest[i], between(layout, next, i));
    }
    return sum;
}

} // namespace

Length shortestWay(const Layout& layout) {
    const std::size_t n = layout.areas.size();
    if (n > kMostForExact)
        return spanningTree(layout);
    // least[set * n + last]: the shortest way through the set that ends in `last` (Held and Karp).
    constexpr Length kFar = Length::nanometres(std::numeric_limits<std::int64_t>::max() / 2);
    const std::size_t sets = std::size_t{1} << n;
    std::vector<Length> least(sets * n, kFar);
    for (std::size_t i = 0; i < n; ++i)
        least[(std::size_t{1} << i) * n + i] = {};
    Length shortest = n == 0 ? Length{} : kFar;
    for (std::size_t set = 1; set < sets; ++set)
        for (std::size_t last = 0; last < n; ++last) {
            const Length here = least[set * n + last];
            if (here == kFar)
                continue;
            if (set == sets - 1)
                shortest = std::min(shortest, here);
            for (std::size_t next = 0; next < n; ++next) {
                const std::size_t bit = std::size_t{1} << next;
                if ((set & bit) == 0) {
                    Length& to = least[(set | bit) * n + next];
                    to = std::min(to, here + between(layout, last, next));
                }
            }
        }
    return shortest;
}

} // namespace bastewright
