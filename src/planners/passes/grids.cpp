#include "planners/passes/cover.h"
#include "planners/passes/deep.h"

#include <algorithm>

namespace bastewright {
namespace {

using Chain = std::vector<AxisWindow>;

/// The shortest chain whose first window holds a stretch (or lies where it has to).
Chain shortest(const AxisLines& lines, const AxisUse& use, Interval held,
               std::optional<Length> fixed) {
    Chain best;
    const auto offer = [&](const AxisWindow& first) {
        Chain c = outwardFrom(lines, use.toLow, use.toHigh, first);
        if (!c.empty() && (best.empty() || c.size() < best.size()))
            best = std::move(c);
    };
    if (fixed) {
        if (const auto w = windowAt(lines, use.toLow, *fixed))
            offer(*w);
        return best;
    }
    const auto holds = [&](const AxisWindow& w) {
        return lines.cuts[w.lo].at <= held.lo && held.hi <= lines.cuts[w.hi].at;
    };
    for (const AxisWindow& end : {lowEnd(lines, use.toLow), highEnd(lines, use.toHigh)})
        for (const AxisWindow& w : outwardFrom(lines, use.toLow, use.toHigh, end))
            if (holds(w))
                offer(w);
    for (const AxisTable& table : {use.toLow, use.toHigh})
        for (const AxisWindow& w : holding(lines, table, held))
            offer(w);
    return best;
}

Chain fromLow(const AxisLines& lines, const AxisUse& use) {
    return outwardFrom(lines, use.toLow, use.toHigh, lowEnd(lines, use.toLow));
}

/// Rows and columns of windows with a table that is used so.
void addGrids(const Board& board, const Uses& use, const FirstPass& first,
              std::vector<std::vector<Window>>& out) {
    const auto fixed = [&](const AxisUse& u, Length Point::*at) {
        return first.fixed && u.offHigh == Length{} ? std::optional{(*first.fixed).*at}
                                                    : std::nullopt;
    };
    const Chain x = shortest(board.x, use.x, first.held.x(), fixed(use.x, &Point::x));
    const Chain y = shortest(board.y, use.y, first.held.y(), fixed(use.y, &Point::y));
    if (x.empty() || y.empty())
        return;
    // A row beside that of the first pass need not hold the middle.
    const Chain freeX = fromLow(board.x, use.x), freeY = fromLow(board.y, use.y);
    const auto rows = [&](const Chain& others) {
        std::vector<Window> all;
        for (std::size_t i = 0; i < y.size(); ++i)
            for (const AxisWindow& w : i == 0 ? x : others)
                all.push_back({w.lo, w.hi, y[i].lo, y[i].hi});
        if (all.size() <= kMostPasses)
            out.push_back(std::move(all));
    };
    const auto columns = [&](const Chain& others) {
        std::vector<Window> all;
        for (std::size_t i = 0; i < x.size(); ++i)
            for (const AxisWindow& w : i == 0 ? y : others)
                all.push_back({x[i].lo, x[i].hi, w.lo, w.hi});
        if (all.size() <= kMostPasses)
            out.push_back(std::move(all));
    };
    rows(x);
    if (!freeX.empty() && freeX.size() < x.size() && y.size() > 1)
        rows(freeX);
    if (!freeY.empty() && freeY.size() < y.size() && x.size() > 1)
        columns(freeY);
}

/// What a table covers with its middle on the middle of the top, or all of it where it fits.
std::optional<AxisWindow> middleWindow(const AxisLines& lines, const AxisTable& table) {
    if (fits(lines, table))
        return lowEnd(lines, table);
    return windowAt(lines, table, (lines.quilt - table.size) / 2);
}

} // namespace

std::vector<std::vector<Window>> pinwheels(const Board& board, const Lie& lie,
                                           const Window& first) {
    const AxisWindow left = lowEnd(board.x, lie.x), right = highEnd(board.x, lie.x);
    const AxisWindow head = lowEnd(board.y, lie.y), foot = highEnd(board.y, lie.y);
    const std::size_t x = board.x.last(), y = board.y.last();
    return {{first,
             {0, first.x1, head.lo, head.hi},
             {right.lo, right.hi, 0, first.y1},
             {first.x0, x, foot.lo, foot.hi},
             {left.lo, left.hi, first.y0, y}},
            {first,
             {first.x0, x, head.lo, head.hi},
             {left.lo, left.hi, 0, first.y1},
             {0, first.x1, foot.lo, foot.hi},
             {right.lo, right.hi, first.y0, y}}};
}

std::vector<std::vector<Window>> roundTheMiddle(const Board& board, const Lie& lie) {
    std::vector<std::vector<Window>> out;
    const auto x = middleWindow(board.x, lie.x), y = middleWindow(board.y, lie.y);
    if (tooDeep(lie).empty() || !x || !y)
        return out;
    std::vector<Window> ends;
    for (const AxisWindow& ex : {lowEnd(board.x, lie.x), highEnd(board.x, lie.x)})
        for (const AxisWindow& ey : {lowEnd(board.y, lie.y), highEnd(board.y, lie.y)}) {
            const Window w{ex.lo, ex.hi, ey.lo, ey.hi};
            if (std::ranges::find(ends, w) == ends.end())
                ends.push_back(w);
        }
    for (const Uses& use : usesOf(lie)) {
        const bool strips = use.y.offHigh != Length{};
        const auto sx = middleWindow(board.x, use.x.toLow), sy = middleWindow(board.y, use.y.toLow);
        if (!sx || !sy)
            continue;
        const Window strip =
            strips ? Window{x->lo, x->hi, sy->lo, sy->hi} : Window{sx->lo, sx->hi, y->lo, y->hi};
        const Window round{x->lo, x->hi, y->lo, y->hi};
        std::vector<Window> set{strip, round};
        // Where the table holds the whole quilt nothing is left.
        for (const Window& w : ends)
            if (w != round)
                set.push_back(w);
        out.push_back(std::move(set));
    }
    return out;
}

std::vector<std::vector<Window>> grids(const Board& board, const Lie& lie, const FirstPass& first) {
    std::vector<std::vector<Window>> out;
    for (const Uses& use : usesOf(lie))
        addGrids(board, use, first, out);
    std::ranges::stable_sort(out, {}, [](const auto& g) { return g.size(); });
    return out;
}

} // namespace bastewright
