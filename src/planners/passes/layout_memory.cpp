#include "planners/passes/layout_memory.h"

#include "planners/surface/reachable.h"

#include <algorithm>

namespace bastewright {
namespace {

std::vector<Length> cutsOf(const AxisLines& lines) {
    std::vector<Length> out;
    for (const Cut& c : lines.cuts)
        out.push_back(c.at);
    return out;
}

/// Where nothing on the table is out of reach it does not matter how far people get.
Lie asKnown(Lie lie) {
    if (!lie.floor && outOfReach({{}, {}, lie.x.size, lie.y.size}, lie.closed, lie.reach).empty())
        lie.reach = lie.x.size + lie.y.size;
    return lie;
}

} // namespace

std::optional<Layout> LayoutMemory::layOut(const LayoutInput& in) {
    auto x = cutsOf(in.board.x), y = cutsOf(in.board.y);
    if (points_ != in.board.points || x_ != x || y_ != y) {
        points_ = in.board.points;
        x_ = std::move(x);
        y_ = std::move(y);
        known_.clear();
    }
    const Lie lie = asKnown(in.lie);
    const auto at = std::ranges::find_if(known_, [&](const Known& k) {
        return k.start == in.start && k.search == in.search && k.briefly == in.briefly &&
               k.row == in.row && k.lie == lie;
    });
    if (at != known_.end())
        return at->layout;
    auto layout = bastewright::layOut(in);
    // What a stop has cut short is nothing to remember.
    if (in.stop.stop_requested())
        return layout;
    return known_.emplace_back(lie, in.start, in.row, in.search, in.briefly, std::move(layout))
        .layout;
}

} // namespace bastewright
