#include "planners/passes/board.h"

#include "planners/passes/table_places.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <array>
#include <bit>
#include <set>

namespace bastewright {
namespace {

constexpr std::size_t kMostColumns = 64;

std::vector<std::size_t> sorted(const std::set<std::size_t>& cuts) {
    return {cuts.begin(), cuts.end()};
}

bool isOneRun(std::uint64_t row) {
    if (row == 0)
        return true;
    row >>= std::countr_zero(row);
    return (row & (row + 1)) == 0;
}

bool unbroken(const CellSet& set) {
    std::uint64_t begun = 0, ended = 0;
    for (const std::uint64_t row : set) {
        if (!isOneRun(row) || (row & ended) != 0)
            return false;
        begun |= row;
        ended |= begun & ~row;
    }
    return true;
}

/// The cuts round a set of cells.
Window around(const Cells& cells, const CellSet& set) {
    std::uint64_t columns = 0;
    std::size_t first = set.size(), last = 0;
    for (std::size_t r = 0; r < set.size(); ++r)
        if (set[r] != 0) {
            columns |= set[r];
            first = std::min(first, r);
            last = r;
        }
    const auto lo = static_cast<std::size_t>(std::countr_zero(columns));
    const auto hi = static_cast<std::size_t>(64 - std::countl_zero(columns));
    return {cells.x[lo], cells.x[hi], cells.y[first], cells.y[last + 1]};
}

/// Places along one axis for what lies between two cuts; where the table is too small by a last row
/// only, those of the rest, with the cut where the row begins.
struct Places {
    Interval at;
    std::optional<std::size_t> rowFrom;
};

Places placesOf(const AxisLines& lines, const AxisTable& table, std::size_t lo, std::size_t hi) {
    Places out{placesFor(lines, table, lo, hi), {}};
    if (out.at.lo <= out.at.hi || lo != 0 || hi != lines.last())
        return out;
    const Length at = placesFor(lines, table, 0, 1).hi;
    const auto window = windowAt(lines, table, at);
    if (!window || !window->pulled)
        return out;
    std::size_t cut = lines.last() - 1;
    while (cut > 1 && placesFor(lines, table, 0, cut).lo > placesFor(lines, table, 0, cut).hi)
        --cut;
    return {placesFor(lines, table, 0, cut), cut};
}

/// Narrows the places of the table to those that keep the anchors on it; false where a fresh area
/// touches nothing that is basted.
bool keepAnchors(const Board& board, const Lie& lie, const Cells& cells, const CellSet& fresh,
                 const CellSet& basted, Interval& x, Interval& y) {
    bool touches = false;
    const auto raise = [&](Interval& places, Length size, Length edge) {
        places.lo = std::max(places.lo, edge - size);
        touches = true;
    };
    const auto lower = [&](Interval& places, Length edge) {
        places.hi = std::min(places.hi, edge);
        touches = true;
    };
    for (std::size_t r = 0; r < fresh.size(); ++r) {
        for (std::uint64_t bits = fresh[r] & (basted[r] << 1); bits != 0; bits &= bits - 1) {
            const std::size_t cut = cells.x[static_cast<std::size_t>(std::countr_zero(bits))];
            lower(x, board.x.cuts[cut].at - anchorBelow(board.x, lie.x, cut));
        }
        for (std::uint64_t bits = fresh[r] & (basted[r] >> 1); bits != 0; bits &= bits - 1) {
            const std::size_t cut = cells.x[static_cast<std::size_t>(std::countr_zero(bits)) + 1];
            raise(x, lie.x.size, board.x.cuts[cut].at + anchorAbove(board.x, lie.x, cut));
        }
        if (r > 0 && (fresh[r] & basted[r - 1]) != 0)
            lower(y, board.y.cuts[cells.y[r]].at - anchorBelow(board.y, lie.y, cells.y[r]));
        if (r + 1 < fresh.size() && (fresh[r] & basted[r + 1]) != 0)
            raise(y, lie.y.size,
                  board.y.cuts[cells.y[r + 1]].at + anchorAbove(board.y, lie.y, cells.y[r + 1]));
    }
    return touches;
}

/// The lines between two places, as cuts; nothing where there are none.
std::optional<std::pair<std::size_t, std::size_t>> cutsRound(const AxisLines& lines, Length lo,
                                                             Length hi) {
    const auto first = std::ranges::upper_bound(lines.at, lo);
    const auto last = std::ranges::lower_bound(lines.at, hi);
    if (first >= last)
        return {};
    const auto from = static_cast<std::size_t>(first - lines.at.begin());
    const auto to = static_cast<std::size_t>(last - lines.at.begin());
    const auto a = std::ranges::upper_bound(lines.cuts, from, {}, &Cut::before);
    const auto b = std::ranges::lower_bound(lines.cuts, to, {}, &Cut::before);
    return std::pair{static_cast<std::size_t>(a - lines.cuts.begin()) - 1,
                     static_cast<std::size_t>(b - lines.cuts.begin())};
}

/// The shortest way along one axis that brings lines `lo`..`hi` within reach of an open end.
std::optional<Length> pulledTo(Length at, Length size, Length reach, Length lo, Length hi,
                               bool loOpen, bool hiOpen) {
    std::optional<Length> best;
    const auto offer = [&](Length to) {
        if (!best || abs(to - at) < abs(*best - at))
            best = to;
    };
    if (loOpen)
        offer(std::max(at, hi - reach));
    if (hiOpen)
        offer(std::min(at, lo + reach - size));
    return best;
}

enum class Reached { all, afterPull, no };

/// What of the fresh area somebody gets to with the table here.
Reached reached(const Board& board, const Lie& lie, const Cells& cells, const Window& fresh,
                Step& step) {
    step.pulls.clear();
    if (lie.floor)
        return Reached::all;
    const Rect table{step.at.x, step.at.y, step.at.x + lie.x.size, step.at.y + lie.y.size};
    const Rect middle = outOfReach(table, lie.closed, lie.reach);
    if (middle.empty() || !middle.overlaps(areaOf(board, fresh)))
        return Reached::all;
    Region inside;
    for (const Rect& part : regionOf(board, cells, step.fresh).parts)
        if (const Rect shared = intersection(part, middle); !shared.empty())
            inside.parts.push_back(shared);
    const Rect left = inside.bounds();
    if (left.empty())
        return Reached::all;
    const auto x = cutsRound(board.x, left.x0, left.x1), y = cutsRound(board.y, left.y0, left.y1);
    if (!x || !y)
        return Reached::all;
    if (std::min(left.width(), left.length()) > kPulledAcross)
        return Reached::no;
    Pull pull{{std::max(x->first, fresh.x0), std::min(x->second, fresh.x1),
               std::max(y->first, fresh.y0), std::min(y->second, fresh.y1)},
              step.at};
    const auto toX = pulledTo(step.at.x, lie.x.size, lie.reach, left.x0, left.x1,
                              isOpen(lie, Side::left), isOpen(lie, Side::right));
    const auto toY = pulledTo(step.at.y, lie.y.size, lie.reach, left.y0, left.y1,
                              isOpen(lie, Side::head), isOpen(lie, Side::foot));
    if (!toX && !toY)
        return Reached::no;
    if (toX && (!toY || abs(*toX - step.at.x) < abs(*toY - step.at.y)))
        pull.at.x = *toX;
    else
        pull.at.y = *toY;
    step.pulls.push_back(pull);
    return Reached::afterPull;
}

/// The last rows of both axes as what is pulled in: that at one end of x; where y has one too, that
/// along x with the table back where it was, and the corner where they meet last: beside a basted
/// corner the row along x would have no anchor on the table.
void pullRows(const Board& board, const Lie& lie, const Places& x, const Places& y,
              const Window& fresh, Step& step) {
    Window rest = fresh;
    Point at = step.at;
    if (x.rowFrom) {
        rest.x1 = *x.rowFrom;
        at.x = placesFor(board.x, lie.x, *x.rowFrom, board.x.last()).lo;
    }
    if (y.rowFrom) {
        rest.y1 = *y.rowFrom;
        at.y = placesFor(board.y, lie.y, *y.rowFrom, board.y.last()).lo;
    }
    if (x.rowFrom)
        step.pulls.push_back({{rest.x1, fresh.x1, rest.y0, rest.y1}, {at.x, step.at.y}});
    if (y.rowFrom)
        step.pulls.push_back({{rest.x0, rest.x1, rest.y1, fresh.y1}, {step.at.x, at.y}});
    if (x.rowFrom && y.rowFrom)
        step.pulls.push_back({{rest.x1, fresh.x1, rest.y1, fresh.y1}, at});
}

} // namespace

std::size_t Step::pullOf(const Board& board, Point point) const {
    return static_cast<std::size_t>(
        std::ranges::find_if(
            pulls, [&](const Pull& p) { return areaOf(board, p.window).contains(point); }) -
        pulls.begin());
}

Point Step::tableFor(const Board& board, Point point) const {
    const std::size_t pull = pullOf(board, point);
    return pull < pulls.size() ? pulls[pull].at : at;
}

Rect areaOf(const Board& board, const Window& w) {
    return {board.x.cuts[w.x0].at, board.y.cuts[w.y0].at, board.x.cuts[w.x1].at,
            board.y.cuts[w.y1].at};
}

Board boardWith(AxisLines x, AxisLines y, std::vector<Point> points) {
    Board out{std::move(x), std::move(y), std::move(points), {}};
    const std::size_t w = out.x.cuts.size(), h = out.y.cuts.size();
    out.before.assign(w * h, 0);
    for (const Point& p : out.points)
        ++out.before[(cutBefore(out.y, p.y) + 1) * w + cutBefore(out.x, p.x) + 1];
    for (std::size_t r = 0; r < h; ++r)
        for (std::size_t c = 1; c < w; ++c)
            out.before[r * w + c] += out.before[r * w + c - 1];
    for (std::size_t r = 1; r < h; ++r)
        for (std::size_t c = 0; c < w; ++c)
            out.before[r * w + c] += out.before[(r - 1) * w + c];
    return out;
}

std::optional<Cells> cellsOf(const Board& board, const std::vector<Window>& windows) {
    std::set<std::size_t> x{0, board.x.last()}, y{0, board.y.last()};
    for (const Window& w : windows) {
        x.insert({w.x0, w.x1});
        y.insert({w.y0, w.y1});
    }
    if (x.size() > kMostColumns)
        return {};
    Cells out{sorted(x), sorted(y), {}};
    const auto before = [&](std::size_t cx, std::size_t cy) {
        return board.before[cy * board.x.cuts.size() + cx];
    };
    out.points.reserve(out.columns() * out.rows());
    for (std::size_t r = 0; r < out.rows(); ++r)
        for (std::size_t c = 0; c < out.columns(); ++c)
            out.points.push_back(before(out.x[c + 1], out.y[r + 1]) -
                                 before(out.x[c], out.y[r + 1]) - before(out.x[c + 1], out.y[r]) +
                                 before(out.x[c], out.y[r]));
    return out;
}

CellSet cellsIn(const Cells& cells, const Window& w) {
    const auto index = [](const std::vector<std::size_t>& cuts, std::size_t cut) {
        return static_cast<std::size_t>(std::ranges::lower_bound(cuts, cut) - cuts.begin());
    };
    const std::size_t x0 = index(cells.x, w.x0), x1 = index(cells.x, w.x1);
    const std::uint64_t upTo = x1 >= 64 ? ~std::uint64_t{0} : (std::uint64_t{1} << x1) - 1;
    const std::uint64_t row = upTo & ~((std::uint64_t{1} << x0) - 1);
    CellSet out(cells.rows(), 0);
    for (std::size_t r = index(cells.y, w.y0); r < index(cells.y, w.y1); ++r)
        out[r] = row;
    return out;
}

CellSet joined(CellSet set, const CellSet& more) {
    for (std::size_t r = 0; r < set.size(); ++r)
        set[r] |= more[r];
    return set;
}

int pointsIn(const Cells& cells, const CellSet& set) {
    int sum = 0;
    for (std::size_t r = 0; r < set.size(); ++r)
        for (std::uint64_t bits = set[r]; bits != 0; bits &= bits - 1)
            sum +=
                cells
                    .points[r * cells.columns() + static_cast<std::size_t>(std::countr_zero(bits))];
    return sum;
}

Region regionOf(const Board& board, const Cells& cells, const CellSet& set) {
    Region out;
    for (std::size_t r = 0; r < set.size(); ++r) {
        // Every row is one run; rows with the same run make one part.
        if (set[r] == 0)
            continue;
        std::size_t end = r + 1;
        while (end < set.size() && set[end] == set[r])
            ++end;
        for (std::uint64_t bits = set[r]; bits != 0;) {
            const auto lo = static_cast<std::size_t>(std::countr_zero(bits));
            std::size_t hi = lo;
            while (hi < 64 && (bits >> hi & 1) != 0)
                bits &= ~(std::uint64_t{1} << hi++);
            out.parts.push_back(
                areaOf(board, {cells.x[lo], cells.x[hi], cells.y[r], cells.y[end]}));
        }
        r = end - 1;
    }
    return out;
}

std::optional<Step> stepInto(const Board& board, const Lie& lie, const Cells& cells,
                             const CellSet& basted, const Window& window,
                             const std::optional<Rect>& within, std::optional<Point> before,
                             const StepCost& cost) {
    Step step;
    step.fresh = cellsIn(cells, window);
    CellSet after = basted;
    bool any = false;
    for (std::size_t r = 0; r < after.size(); ++r) {
        step.fresh[r] &= ~basted[r];
        after[r] |= step.fresh[r];
        any = any || step.fresh[r] != 0;
    }
    if (!any || !unbroken(after))
        return {};
    step.points = pointsIn(cells, step.fresh);
    const Window fresh = around(cells, step.fresh);
    Places x = placesOf(board.x, lie.x, fresh.x0, fresh.x1);
    Places y = placesOf(board.y, lie.y, fresh.y0, fresh.y1);
    if (before && !keepAnchors(board, lie, cells, step.fresh, basted, x.at, y.at))
        return {};
    if (within) {
        x.at = intersection(x.at, within->x());
        y.at = intersection(y.at, within->y());
    }
    if (x.at.lo > x.at.hi || y.at.lo > y.at.hi)
        return {};
    const auto placesAlong = [&](bool across) {
        const bool bothOpen = across ? isOpen(lie, Side::left) && isOpen(lie, Side::right)
                                     : isOpen(lie, Side::head) && isOpen(lie, Side::foot);
        return tablePlaces(
            {.lines = across ? board.x : board.y,
             .size = across ? lie.x.size : lie.y.size,
             .places = across ? x.at : y.at,
             .lo = across ? fresh.x0 : fresh.y0,
             .hi = across ? fresh.x1 : fresh.y1,
             .before = before ? std::optional{across ? before->x : before->y} : std::nullopt,
             .reach = !lie.floor && bothOpen ? lie.reach : Length{}});
    };
    const TablePlaces xs = placesAlong(true), ys = placesAlong(false);
    std::optional<Step> afterPull, cheapest;
    double least = 0;
    for (const Length atX : xs)
        for (const Length atY : ys) {
            step.at = {atX, atY};
            const Reached how = reached(board, lie, cells, fresh, step);
            if (how == Reached::no)
                continue;
            pullRows(board, lie, x, y, fresh, step);
            if (cost) {
                if (const double here = cost(cells, step, before); !cheapest || here < least) {
                    cheapest = step;
                    least = here;
                }
                continue;
            }
            if (how == Reached::all)
                return step;
            if (!afterPull)
                afterPull = step;
        }
    return cost ? cheapest : afterPull;
}

} // namespace bastewright
