#include "planners/surface/helper_order.h"

#include <algorithm>
#include <tuple>

namespace bastewright {
namespace {

bool before(const Helper& a, const Helper& b) {
    const auto rest = [](const Helper& h) {
        return std::tie(h.lean, h.from, h.until, h.breaks, h.irons, h.lifts, h.closes, h.pins,
                        h.bends, h.seated, h.troubleBreathing, h.side, h.name);
    };
    return std::tie(b.pace, b.reach) != std::tie(a.pace, a.reach)
               ? std::tie(b.pace, b.reach) < std::tie(a.pace, a.reach)
               : rest(a) < rest(b);
}

} // namespace

std::vector<Helper> inOneOrder(std::vector<Helper> helpers) {
    std::ranges::sort(helpers, before);
    return helpers;
}

} // namespace bastewright
