#include "unit/passes/boards.h"

#include "measures/length_text.h"

#include <algorithm>
#include <cmath>

namespace bastewright::testing {
namespace {

constexpr Length kStep = Length::inch64ths(32);

Board boardOfPoints(std::vector<Point> points, Length width, Length length, Length spacing) {
    std::vector<Length> x, y;
    for (const Point& p : points) {
        x.push_back(p.x);
        y.push_back(p.y);
    }
    return boardWith(axisLines(std::move(x), width, spacing, {}),
                     axisLines(std::move(y), length, spacing, {}), std::move(points));
}

/// Half inches of the top: the pass that basted each, 0 for none.
struct Grid {
    int columns, rows;
    std::vector<int> pass;
    int& at(int x, int y) { return pass[std::size_t(y * columns + x)]; }
};

/// A little beside the middle, so that no boundary runs through it.
Point middleOf(int x, int y) {
    constexpr Length off = Length::nanometres(1'003);
    return {kStep * x + kStep / 2 + off, kStep * y + kStep / 2 + off};
}

std::string say(const std::string& what, Point at) {
    return what + " at " + format(at.x, Unit::inch) + ", " + format(at.y, Unit::inch) + "\n";
}

/// Rows or columns of which a basted place, a bare one and a basted one follow one another.
int broken(Grid& grid) {
    int n = 0;
    const auto check = [&](int count, int along, auto at) {
        for (int i = 0; i < count; ++i) {
            int state = 0; // bare, basted, bare again
            for (int k = 0; k < along; ++k) {
                const bool basted = at(i, k) != 0;
                if (state == 2 && basted)
                    ++n;
                if (state == 1 && !basted)
                    state = 2;
                if (state == 0 && basted)
                    state = 1;
            }
        }
    };
    check(grid.rows, grid.columns, [&](int y, int x) { return grid.at(x, y); });
    check(grid.columns, grid.rows, [&](int x, int y) { return grid.at(x, y); });
    return n;
}

double depthOf(const Lie& lie, Point p, const Rect& table) {
    double least = 1e9;
    for (const Side s : kSides)
        if (std::ranges::find(lie.closed, s) == lie.closed.end()) {
            const Length d = s == Side::head   ? p.y - table.y0
                             : s == Side::foot ? table.y1 - p.y
                             : s == Side::left ? p.x - table.x0
                                               : table.x1 - p.x;
            least = std::min(least, d.in());
        }
    return least;
}

} // namespace

Board rowsAcross(Length width, Length length) {
    const auto snapped = [](double in) { return Length::inch64ths(std::llround(in * 64)); };
    const int rows = static_cast<int>((length.in() - 2) / 4.375) + 2;
    const int marks = static_cast<int>((width.in() - 2) / 4.875) + 1;
    const double gap = (length.in() - 2) / (rows - 1), step = (width.in() - 2) / marks;
    std::vector<Point> points;
    for (int r = 0; r < rows; ++r)
        for (int k = 0; k <= marks; ++k) {
            const double x = 1 + step * k + (r % 2 == 1 ? step / 2 : 0);
            points.push_back({snapped(std::min(x, width.in() - 1)), snapped(1 + gap * r)});
        }
    return boardOfPoints(std::move(points), width, length, Length::inches(4));
}

Board squares(Length width, Length length, Length side) {
    std::vector<Point> points;
    for (Length y = side / 2; y < length; y += side)
        for (Length x = side / 2; x < width; x += side)
            points.push_back({x, y});
    return boardOfPoints(std::move(points), width, length, side);
}

Lie tableOf(Length x, Length y, Length reach) {
    const Length rim = Length::inches(2);
    Lie out;
    out.x = {x, rim, rim, {}, {}, Length::inches(6), Length::inches(4)};
    out.y = out.x;
    out.y.size = y;
    out.reach = reach;
    return out;
}

std::size_t fewest(const Board& board, Length length, Length width, Basting::Start start,
                   Length reach) {
    std::size_t best = 0;
    for (const bool turned : {false, true}) {
        const Lie lie = tableOf(turned ? length : width, turned ? width : length, reach);
        const auto layout = layOut({board, lie, start, Length::inches(2)});
        if (layout && (best == 0 || layout->sequence.steps.size() < best))
            best = layout->sequence.steps.size();
    }
    return best;
}

std::string faults(const Board& board, const Lie& lie, const Sequence& sequence) {
    const auto cells = [](Length l) { return static_cast<int>(ratio(l, kStep) + 0.5); };
    Grid grid{cells(board.x.quilt), cells(board.y.quilt), {}};
    grid.pass.assign(std::size_t(grid.columns * grid.rows), 0);
    std::string out;
    const int anchor = cells(Length::inches(6));
    for (std::size_t i = 0; i < sequence.steps.size(); ++i) {
        const Step& step = sequence.steps[i];
        const Region fresh = regionOf(board, sequence.cells, step.fresh);
        const int number = static_cast<int>(i) + 1;
        const auto tableAt = [&](Point at) {
            return Rect{at.x, at.y, at.x + lie.x.size, at.y + lie.y.size};
        };
        for (const Point& p : board.points) {
            if (!fresh.contains(p))
                continue;
            const Rect table = tableAt(step.tableFor(board, p));
            const bool inX =
                (p.x >= table.x0 + lie.x.insetLo || table.x0 <= -lie.x.pastLo) &&
                (p.x <= table.x1 - lie.x.insetHi || table.x1 >= board.x.quilt + lie.x.pastHi);
            const bool inY =
                (p.y >= table.y0 + lie.y.insetLo || table.y0 <= -lie.y.pastLo) &&
                (p.y <= table.y1 - lie.y.insetHi || table.y1 >= board.y.quilt + lie.y.pastHi);
            if (!inX || !inY)
                out += say("pass " + std::to_string(number) + ": a point outside the field", p);
            if (depthOf(lie, p, table) > lie.reach.in() + 1e-6)
                out += say("pass " + std::to_string(number) + ": a point out of reach", p);
        }
        // Beside a boundary the table goes on under what is basted.
        const Rect table = tableAt(step.at);
        for (int y = 0; y < grid.rows; ++y)
            for (int x = 0; x < grid.columns; ++x) {
                if (!fresh.contains(middleOf(x, y)))
                    continue;
                for (const auto& [dx, dy] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                    const int bx = x + dx, by = y + dy;
                    if (bx < 0 || by < 0 || bx >= grid.columns || by >= grid.rows ||
                        grid.at(bx, by) == 0)
                        continue;
                    const Point far = middleOf(x + dx * (anchor - 1), y + dy * (anchor - 1));
                    const bool on = dx != 0 ? table.x().contains(far.x) : table.y().contains(far.y);
                    if (!on)
                        out += say("pass " + std::to_string(number) + ": no anchor", far);
                }
            }
        for (int y = 0; y < grid.rows; ++y)
            for (int x = 0; x < grid.columns; ++x)
                if (fresh.contains(middleOf(x, y))) {
                    if (grid.at(x, y) != 0)
                        out += say("basted twice", middleOf(x, y));
                    grid.at(x, y) = number;
                }
        if (const int n = broken(grid); n > 0)
            out += "pass " + std::to_string(number) + ": bare between basted, " +
                   std::to_string(n) + " places\n";
    }
    for (int y = 0; y < grid.rows; ++y)
        for (int x = 0; x < grid.columns; ++x)
            if (grid.at(x, y) == 0)
                return out + say("never basted", middleOf(x, y));
    return out;
}

} // namespace bastewright::testing
