#include "planners/passes/layout.h"

#include <algorithm>
#include <optional>

namespace bastewright {
namespace {

/// Where the field starts, along one axis, for run i: centred on the first run, with the outer edge
/// of the run at the outer edge of the field elsewhere, so that new area is near a side to stand
/// at.
Length fieldStart(const AxisCuts& cuts, std::size_t i, Length field) {
    if (i == cuts.first)
        return cuts.firstField.lo;
    return i < cuts.first ? cuts.run(i).lo : cuts.run(i).hi - field;
}

FreshArea place(const LayoutInput& in, const Rect& fresh, Point fieldAt) {
    const Rect& f = in.surface.field;
    const Point corner{fieldAt.x - f.x0, fieldAt.y - f.y0};
    FreshArea out;
    out.fresh = fresh;
    out.table = {corner.x, corner.y, corner.x + in.surface.table.width,
                 corner.y + in.surface.table.length};
    out.field =
        intersection(f.moved({corner.x, corner.y}), Rect{{}, {}, in.top.width, in.top.length});
    return out;
}

/// The same input with x and y exchanged, and a result exchanged back.
Rect swapped(const Rect& r) {
    return {r.y0, r.x0, r.y1, r.x1};
}

LayoutInput swapped(const LayoutInput& in) {
    LayoutInput out = in;
    std::swap(out.top.width, out.top.length);
    std::swap(out.surface.table.width, out.surface.table.length);
    std::swap(out.seamsX, out.seamsY);
    std::swap(out.besideX, out.besideY);
    out.surface.field = swapped(in.surface.field);
    return out;
}

AxisRoom roomX(const LayoutInput& in) {
    return {in.top.width, in.surface.field.width(), in.anchor, in.row};
}
AxisRoom roomY(const LayoutInput& in) {
    return {in.top.length, in.surface.field.length(), in.anchor, in.row};
}

AxisCuts cutsFor(const LayoutInput& in, const AxisRoom& room, Length beside,
                 const std::vector<Length>& seams) {
    if (in.start == Basting::Start::centred && beside > Length{})
        if (auto cuts = besideCentreCuts(room, beside, seams))
            return *std::move(cuts);
    return in.start == Basting::Start::centred ? centredCuts(room, seams) : fewestCuts(room, seams);
}

/// Rows of areas: the first row cut by `middle`, the others by `others`.
Layout rows(const LayoutInput& in, Shape shape, const AxisCuts& down, const AxisCuts& middle,
            const AxisCuts& others) {
    Layout out;
    out.shape = shape;
    std::vector<std::vector<std::size_t>> index(down.runs());
    const auto cutsOf = [&](std::size_t row) -> const AxisCuts& {
        return row == down.first ? middle : others;
    };
    for (std::size_t row = 0; row < down.runs(); ++row) {
        const AxisCuts& cuts = cutsOf(row);
        for (std::size_t i = 0; i < cuts.runs(); ++i) {
            index[row].push_back(out.areas.size());
            if (row == down.first && i == cuts.first)
                out.first = out.areas.size();
            out.areas.push_back(
                place(in, {cuts.run(i).lo, down.run(row).lo, cuts.run(i).hi, down.run(row).hi},
                      {fieldStart(cuts, i, in.surface.field.width()),
                       fieldStart(down, row, in.surface.field.length())}));
        }
    }
    for (std::size_t row = 0; row < down.runs(); ++row) {
        const AxisCuts& cuts = cutsOf(row);
        for (std::size_t i = 0; i < cuts.runs(); ++i) {
            FreshArea& area = out.areas[index[row][i]];
            if (i < cuts.first)
                area.needs.push_back(index[row][i + 1]);
            if (i > cuts.first)
                area.needs.push_back(index[row][i - 1]);
            if (row == down.first)
                continue;
            const std::size_t inner = row < down.first ? row + 1 : row - 1;
            for (const std::size_t k : index[inner])
                if (out.areas[k].fresh.x().overlaps(area.fresh.x()))
                    area.needs.push_back(k);
        }
    }
    return out;
}

Layout exchanged(Layout layout, Shape shape) {
    layout.shape = shape;
    for (FreshArea& a : layout.areas) {
        a.fresh = swapped(a.fresh);
        a.table = swapped(a.table);
        a.field = swapped(a.field);
    }
    return layout;
}

/// The middle of a pinwheel along one axis: lo < hi, symmetrical about the quilt's middle. An arm
/// reaches over it from either side, `over` long at most, and the others beside it lie in `beside`
/// steps. Nothing where the middle would be a scrap or larger than the field.
std::optional<Interval> pinwheelMiddle(const AxisRoom& r, Length over, std::int64_t beside,
                                       const std::vector<Length>& seams) {
    const Length reach = r.field - r.anchor; // an arm has basted area along one of its sides
    const Length middle = r.quilt / 2;
    const Length least =
        std::max(middle - beside * reach, Length::inches(6)); // half of the middle area
    const Length most = std::min(over - middle, r.field / 2);
    if (r.quilt <= r.field || most < least)
        return {};
    Length half = most;
    for (const Length s : seams) // the outermost pair of seams
        if (s - middle >= least && s - middle <= most &&
            std::ranges::binary_search(seams, r.quilt - s))
            half = s - middle;
    return Interval{middle - half, r.quilt - middle + half};
}

/// Cuts a block of the top that lies outward of basted area into near-equal areas: `columns`
/// growing to the right (or left), `rows` growing down (or up), each needing the one before it.
void addArm(const LayoutInput& in, const Rect& block, std::int64_t columns, std::int64_t rows,
            bool rightward, bool downward, Layout& out) {
    const Length ux = in.surface.field.width(), uy = in.surface.field.length();
    std::vector<std::vector<std::size_t>> index(static_cast<std::size_t>(rows));
    const auto cut = [](Interval whole, std::int64_t parts, std::int64_t i, bool forward) {
        const std::int64_t k = forward ? i : parts - 1 - i;
        return Interval{whole.lo + whole.size() * k / parts,
                        whole.lo + whole.size() * (k + 1) / parts};
    };
    for (std::int64_t row = 0; row < rows; ++row)
        for (std::int64_t column = 0; column < columns; ++column) {
            const Interval x = cut(block.x(), columns, column, rightward);
            const Interval y = cut(block.y(), rows, row, downward);
            // The outer edges lie at the outer edges of the field, the anchor is on the inner
            // sides.
            FreshArea area = place(in, {x.lo, y.lo, x.hi, y.hi},
                                   {rightward ? x.hi - ux : x.lo, downward ? y.hi - uy : y.lo});
            if (row == 0 && column == 0)
                area.needs.push_back(0);
            if (column > 0)
                area.needs.push_back(index[static_cast<std::size_t>(row)].back());
            if (row > 0)
                area.needs.push_back(
                    index[static_cast<std::size_t>(row - 1)][static_cast<std::size_t>(column)]);
            index[static_cast<std::size_t>(row)].push_back(out.areas.size());
            out.areas.push_back(std::move(area));
        }
}

/// Steps of a pinwheel: head and foot arms are columns × rows, the right one sideColumns ×
/// sideRows; the left one, which comes last, has `lastRows`.
struct Arms {
    std::int64_t columns, rows, sideColumns, sideRows, lastRows;
    std::size_t passes() const {
        return static_cast<std::size_t>(1 + 2 * columns * rows +
                                        sideColumns * (sideRows + lastRows));
    }
};

/// How long an arm of so many steps may be that has no basted area at its end.
Length early(const AxisRoom& r, std::int64_t steps) {
    return steps == 1 ? r.field : steps * (r.field - r.anchor);
}

/// Whether two areas that do not overlap share a stretch of edge.
bool touch(const Rect& a, const Rect& b) {
    const bool beside = (a.x1 == b.x0 || b.x1 == a.x0) && a.y().overlaps(b.y());
    const bool below = (a.y1 == b.y0 || b.y1 == a.y0) && a.x().overlaps(b.x());
    return beside || below;
}

/// Head, right, foot, left: each arm ends at the side of the next, so that only the last has basted
/// area at its end.
std::optional<Layout> pinwheel(const LayoutInput& in, const Arms& arms) {
    const AxisRoom rx = roomX(in), ry = roomY(in);
    const auto x = pinwheelMiddle(rx, early(rx, arms.columns), arms.sideColumns, in.seamsX);
    const Length last = arms.lastRows * (ry.field - ry.anchor);
    const auto y =
        pinwheelMiddle(ry, std::min(early(ry, arms.sideRows), last), arms.rows, in.seamsY);
    if (!x || !y)
        return {};
    const Length w = in.top.width, h = in.top.length;
    Layout out;
    out.shape = Shape::pinwheel;
    out.areas.push_back(
        place(in, {x->lo, y->lo, x->hi, y->hi}, {(w - rx.field) / 2, (h - ry.field) / 2}));
    std::vector<std::size_t> from; // where each arm begins
    const auto arm = [&](const Rect& block, std::int64_t columns, std::int64_t rows, bool rightward,
                         bool downward) {
        from.push_back(out.areas.size());
        addArm(in, block, columns, rows, rightward, downward, out);
        if (from.size() < 2)
            return;
        for (std::size_t i = from.back(); i < out.areas.size(); ++i)
            for (std::size_t k = from[from.size() - 2]; k < from.back(); ++k)
                if (touch(out.areas[i].fresh, out.areas[k].fresh))
                    out.areas[i].needs.push_back(k);
    };
    arm({{}, {}, x->hi, y->lo}, arms.columns, arms.rows, false, false);
    arm({x->hi, {}, w, y->hi}, arms.sideColumns, arms.sideRows, true, false);
    arm({x->lo, y->hi, w, h}, arms.columns, arms.rows, true, true);
    arm({{}, y->lo, x->lo, h}, arms.sideColumns, arms.lastRows, false, true);
    return out;
}

/// Four arms round a centred middle, in fewer passes than a centred grid needs. The least of all
/// ways.
std::optional<Layout> pinwheel(const LayoutInput& in) {
    std::optional<Layout> best;
    const auto most = std::max(freeCount(roomX(in)), freeCount(roomY(in))) + 1;
    for (std::int64_t a = 1; a <= most; ++a)
        for (std::int64_t b = 1; b <= most; ++b)
            for (std::int64_t c = 1; c <= most; ++c)
                for (std::int64_t d = 1; d <= most; ++d)
                    for (const std::int64_t more : {0, 1}) {
                        const Arms arms{a, b, c, d, d + more};
                        if (best && best->areas.size() <= arms.passes())
                            break;
                        if (auto wheel = pinwheel(in, arms))
                            best = std::move(wheel);
                    }
    return best;
}

} // namespace

std::vector<Layout> layouts(const LayoutInput& in) {
    const AxisRoom rx = roomX(in), ry = roomY(in);
    if (in.surface.field.empty() || (rx.field <= rx.anchor && rx.quilt > rx.field) ||
        (ry.field <= ry.anchor && ry.quilt > ry.field))
        return {};
    if (freeCount(rx) * freeCount(ry) > std::int64_t{kMostPasses})
        return {};
    std::vector<Layout> out;
    const AxisCuts x = cutsFor(in, rx, in.besideX, in.seamsX);
    const AxisCuts y = cutsFor(in, ry, in.besideY, in.seamsY);
    out.push_back(rows(in, Shape::grid, y, x, x));
    const AxisCuts freeX = freeCuts(rx, in.seamsX), freeY = freeCuts(ry, in.seamsY);
    if (freeX.runs() < x.runs() && y.runs() > 1)
        out.push_back(rows(in, Shape::brickRows, y, x, freeX));
    if (freeY.runs() < y.runs() && x.runs() > 1) {
        const LayoutInput turned = swapped(in);
        out.push_back(exchanged(rows(turned, Shape::brickRows, x, y, freeY), Shape::brickColumns));
    }
    // Its first field is centred, which serves the other start as well.
    if (in.besideX == Length{} && in.besideY == Length{}) {
        if (auto wheel = pinwheel(in))
            out.push_back(*std::move(wheel));
        if (auto wheel = pinwheel(swapped(in))) // turns the other way
            out.push_back(exchanged(*std::move(wheel), Shape::pinwheel));
    }
    std::erase_if(out, [](const Layout& l) { return l.areas.size() > kMostPasses; });
    std::ranges::stable_sort(out, {}, [](const Layout& l) { return l.areas.size(); });
    return out;
}

int leastPasses(const LayoutInput& in) {
    const AxisRoom rx = roomX(in), ry = roomY(in);
    if (rx.quilt <= rx.field)
        return static_cast<int>(freeCount(ry));
    if (ry.quilt <= ry.field)
        return static_cast<int>(freeCount(rx));
    return static_cast<int>(ceilDiv(rx.quilt, rx.field) * ceilDiv(ry.quilt, ry.field));
}

} // namespace bastewright
