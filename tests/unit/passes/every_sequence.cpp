#include "unit/passes/every_sequence.h"

#include <set>

namespace bastewright::testing {
namespace {

std::vector<std::pair<std::size_t, std::size_t>> stretches(const AxisLines& lines,
                                                           const AxisTable& table) {
    std::vector<std::pair<std::size_t, std::size_t>> out;
    for (std::size_t lo = 0; lo < lines.last(); ++lo)
        for (std::size_t hi = lo + 1; hi <= lines.last(); ++hi)
            if (const Interval at = placesFor(lines, table, lo, hi); at.lo <= at.hi)
                out.push_back({lo, hi});
    return out;
}

} // namespace

std::size_t leastByEverySequence(const Board& board, const Lie& lie, const FirstPass& first,
                                 std::size_t most) {
    std::vector<Window> windows;
    for (const auto& [x0, x1] : stretches(board.x, lie.x))
        for (const auto& [y0, y1] : stretches(board.y, lie.y))
            windows.push_back({x0, x1, y0, y1});
    const auto cells = cellsOf(board, windows);
    if (!cells)
        return 0;
    const std::uint64_t row = (std::uint64_t{1} << cells->columns()) - 1;
    const CellSet none(cells->rows(), 0), all(cells->rows(), row);
    // Where the table lay before decides nothing: places are only preferred by it.
    std::set<CellSet> seen, layer;
    for (const Window& w : windows)
        if (mayBeFirst(board, first, w))
            if (const auto step = stepInto(board, lie, *cells, none, w, first.places(), {}))
                layer.insert(step->fresh);
    for (std::size_t n = 1; n <= most; ++n) {
        if (layer.contains(all))
            return n;
        std::set<CellSet> next;
        for (const CellSet& basted : layer) {
            if (!seen.insert(basted).second)
                continue;
            for (const Window& w : windows)
                if (auto step = stepInto(board, lie, *cells, basted, w, {}, Point{})) {
                    for (std::size_t r = 0; r < basted.size(); ++r)
                        step->fresh[r] |= basted[r];
                    next.insert(std::move(step->fresh));
                }
        }
        layer = std::move(next);
    }
    return 0;
}

} // namespace bastewright::testing
