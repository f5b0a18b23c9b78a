#include "planners/passes/layout.h"

#include <algorithm>
#include <optional>

namespace bastewright {
namespace {

/// Where the field starts, along one axis, for run i: centred on the first run, with the outer edge of
/// the run at the outer edge of the field elsewhere, so that new area is near a side to stand at.
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
    out.field = intersection(f.moved({corner.x, corner.y}),
                             Rect{{}, {}, in.top.width, in.top.length});
    return out;
}

/// The same input with x and y exchanged, and a result exchanged back.
Rect swapped(const Rect& r) { return {r.y0, r.x0, r.y1, r.x1}; }

LayoutInput swapped(const LayoutInput& in) {
    LayoutInput out = in;
    std::swap(out.top.width, out.top.length);
    std::swap(out.surface.table.width, out.surface.table.length);
    std::swap(out.seamsX, out.seamsY);
    out.surface.field = swapped(in.surface.field);
    return out;
}

AxisRoom roomX(const LayoutInput& in) {
    return {in.top.width, in.surface.field.width(), in.anchor, in.row};
}
AxisRoom roomY(const LayoutInput& in) {
    return {in.top.length, in.surface.field.length(), in.anchor, in.row};
}

AxisCuts cutsFor(const LayoutInput& in, const AxisRoom& room, const std::vector<Length>& seams) {
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
            out.areas.push_back(place(in,
                                      {cuts.run(i).lo, down.run(row).lo, cuts.run(i).hi, down.run(row).hi},
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

Layout exchanged(Layout layout) {
    layout.shape = Shape::brickColumns;
    for (FreshArea& a : layout.areas) {
        a.fresh = swapped(a.fresh);
        a.table = swapped(a.table);
        a.field = swapped(a.field);
    }
    return layout;
}

/// Ends x1 < x2 of the middle area of a pinwheel along one axis, symmetrical about the middle: each arm
/// reaches over the middle area, so x2 + v <= U. Nothing where the middle area would be a scrap.
std::optional<Interval> pinwheelMiddle(const AxisRoom& r, const std::vector<Length>& seams) {
    const Length most = r.field - r.anchor; // reach of an arm
    const Length middle = r.quilt / 2;
    const Length least = Length::inches(6); // half of the middle area
    if (most - middle < least || r.quilt <= r.field)
        return {};
    const Length half = std::min(most - middle, r.field / 2);
    Length chosen = half;
    for (const Length s : seams)
        if (s > middle && s - middle <= half && s - middle >= least &&
            std::ranges::binary_search(seams, r.quilt - s))
            chosen = s - middle; // the outermost pair of seams
    return Interval{middle - chosen, r.quilt - middle + chosen};
}

std::optional<Layout> pinwheel(const LayoutInput& in) {
    const auto x = pinwheelMiddle(roomX(in), in.seamsX), y = pinwheelMiddle(roomY(in), in.seamsY);
    if (!x || !y)
        return {};
    const Length w = in.top.width, h = in.top.length;
    const Length ux = in.surface.field.width(), uy = in.surface.field.length();
    Layout out;
    out.shape = Shape::pinwheel;
    out.areas.push_back(place(in, {x->lo, y->lo, x->hi, y->hi}, {(w - ux) / 2, (h - uy) / 2}));
    out.areas.push_back(place(in, {{}, {}, x->hi, y->lo}, {{}, {}}));                 // head
    out.areas.push_back(place(in, {x->hi, {}, w, y->hi}, {w - ux, {}}));              // right
    out.areas.push_back(place(in, {x->lo, y->hi, w, h}, {w - ux, h - uy}));           // foot
    out.areas.push_back(place(in, {{}, y->lo, x->lo, h}, {{}, h - uy}));              // left
    for (std::size_t i = 1; i < 5; ++i)
        out.areas[i].needs = {0};
    return out;
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
    const AxisCuts x = cutsFor(in, rx, in.seamsX), y = cutsFor(in, ry, in.seamsY);
    out.push_back(rows(in, Shape::grid, y, x, x));
    const AxisCuts freeX = freeCuts(rx, in.seamsX), freeY = freeCuts(ry, in.seamsY);
    if (freeX.runs() < x.runs() && y.runs() > 1)
        out.push_back(rows(in, Shape::brickRows, y, x, freeX));
    if (freeY.runs() < y.runs() && x.runs() > 1) {
        const LayoutInput turned = swapped(in);
        out.push_back(exchanged(rows(turned, Shape::brickRows, x, y, freeY)));
    }
    if (const auto wheel = pinwheel(in))
        out.push_back(*wheel);
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
