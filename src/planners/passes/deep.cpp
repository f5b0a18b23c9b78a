#include "planners/passes/deep.h"

#include "planners/surface/reachable.h"

#include <algorithm>

namespace bastewright {

AxisUse allOf(const AxisTable& table) {
    return {table, table, {}, {}};
}

AxisUse stripsOf(const AxisTable& table, Length reach) {
    AxisTable low = table, high = table;
    low.size = high.size = std::min(reach, table.size);
    low.insetHi = high.insetLo = Length{};
    low.pastHi = high.pastLo = Length{};
    low.anchor = high.anchor = Length{};
    low.row = high.row = Length{};
    return {low, high, {}, table.size - low.size};
}

Rect tooDeep(const Lie& lie) {
    if (lie.floor)
        return {};
    const Rect middle = outOfReach({{}, {}, lie.x.size, lie.y.size}, lie.closed, lie.reach);
    return std::min(middle.width(), middle.length()) > kPulledAcross ? middle : Rect{};
}

std::vector<Uses> usesOf(const Lie& lie) {
    if (tooDeep(lie).empty())
        return {{allOf(lie.x), allOf(lie.y)}};
    std::vector<Uses> out;
    if (isOpen(lie, Side::head) || isOpen(lie, Side::foot))
        out.push_back({allOf(lie.x), stripsOf(lie.y, lie.reach)});
    if (isOpen(lie, Side::left) || isOpen(lie, Side::right))
        out.push_back({stripsOf(lie.x, lie.reach), allOf(lie.y)});
    return out;
}

} // namespace bastewright
