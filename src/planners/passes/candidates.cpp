#include "planners/passes/cover.h"
#include "planners/passes/deep.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

/// One axis of a candidate: its window, and the low edge of the whole table.
struct Along {
    AxisWindow window;
    Length at;
    auto operator<=>(const Along&) const = default;
};

void addChain(const AxisLines& lines, const AxisUse& use, const AxisWindow& first, Length off,
              std::set<Along>& out) {
    const auto chain = outwardFrom(lines, use.toLow, use.toHigh, first);
    for (std::size_t i = 0; i < chain.size(); ++i) {
        const Length part = i == 0 ? off : chain[i].lo >= first.lo ? use.offHigh : use.offLow;
        out.insert({chain[i], chain[i].at - part});
    }
}

std::set<Along> along(const AxisLines& lines, const AxisUse& use, Interval held,
                      std::optional<Length> fixed) {
    std::set<Along> out;
    const AxisWindow low = lowEnd(lines, use.toLow), high = highEnd(lines, use.toHigh);
    addChain(lines, use, low, use.offLow, out);
    addChain(lines, use, high, use.offHigh, out);
    if (fixed) {
        if (const auto w = windowAt(lines, use.toLow, *fixed))
            addChain(lines, use, *w, use.offLow, out);
        return out;
    }
    for (const AxisWindow& w : holding(lines, use.toLow, held))
        addChain(lines, use, w, use.offLow, out);
    if (use.offHigh != Length{})
        for (const AxisWindow& w : holding(lines, use.toHigh, held))
            addChain(lines, use, w, use.offHigh, out);
    return out;
}

/// Places of a deep table with what has been basted round the middle of the top in its middle.
void addRound(const AxisLines& lines, const AxisTable& table, const std::set<Along>& firsts,
              std::set<Along>& out) {
    std::set<Along> more;
    for (const Along& a : firsts) {
        const Length middle =
            (lines.cuts[a.window.lo].at + lines.cuts[a.window.hi].at) / 2 - table.size / 2;
        if (const auto w = windowAt(lines, table, middle))
            more.insert({*w, middle});
    }
    out.insert(more.begin(), more.end());
}

} // namespace

std::vector<Candidate> candidates(const Board& board, const Lie& lie, const FirstPass& first) {
    const auto fixedX = first.fixed ? std::optional{first.fixed->x} : std::nullopt;
    const auto fixedY = first.fixed ? std::optional{first.fixed->y} : std::nullopt;
    const Rect deep = tooDeep(lie);
    const std::set<Along> x = along(board.x, allOf(lie.x), first.held.x(), fixedX);
    const std::set<Along> y = along(board.y, allOf(lie.y), first.held.y(), fixedY);
    std::vector<Candidate> out;
    std::set<Window> seen;
    const auto add = [&](const std::set<Along>& xs, const std::set<Along>& ys, const Rect& hole) {
        for (const Along& a : xs)
            for (const Along& b : ys) {
                const Window w{a.window.lo, a.window.hi, b.window.lo, b.window.hi};
                if (w.x0 >= w.x1 || w.y0 >= w.y1 || (hole.empty() && !seen.insert(w).second))
                    continue;
                out.push_back(
                    {w, {a.at, b.at}, intersection(hole.moved({a.at, b.at}), areaOf(board, w))});
            }
    };
    if (deep.empty()) {
        add(x, y, {});
        return out;
    }
    std::set<Along> roundX = x, roundY = y;
    for (const Uses& use : usesOf(lie)) {
        const bool alongX = use.x.offHigh != Length{}, alongY = use.y.offHigh != Length{};
        const auto xs = alongX ? along(board.x, use.x, first.held.x(), {}) : x;
        const auto ys = alongY ? along(board.y, use.y, first.held.y(), {}) : y;
        add(xs, ys, {});
        if (alongX)
            addRound(board.x, lie.x, xs, roundX);
        if (alongY)
            addRound(board.y, lie.y, ys, roundY);
    }
    add(roundX, roundY, deep);
    return out;
}

} // namespace bastewright
