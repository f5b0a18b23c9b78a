#include "planners/passes/placing.h"

namespace bastewright {
namespace {

Rect exchanged(const Rect& r) {
    return {r.y0, r.x0, r.y1, r.x1};
}

} // namespace

AxisRoom roomX(const LayoutInput& in) {
    return {in.top.width, in.surface.field.width(), in.anchor, in.row};
}

AxisRoom roomY(const LayoutInput& in) {
    return {in.top.length, in.surface.field.length(), in.anchor, in.row};
}

FreshArea placed(const LayoutInput& in, const Rect& fresh, Point fieldAt) {
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

Length fieldStart(const AxisCuts& cuts, std::size_t i, Length field) {
    if (i == cuts.first)
        return cuts.firstField.lo;
    return i < cuts.first ? cuts.run(i).lo : cuts.run(i).hi - field;
}

bool touch(const Rect& a, const Rect& b) {
    const bool beside = (a.x1 == b.x0 || b.x1 == a.x0) && a.y().overlaps(b.y());
    const bool below = (a.y1 == b.y0 || b.y1 == a.y0) && a.x().overlaps(b.x());
    return beside || below;
}

LayoutInput exchanged(const LayoutInput& in) {
    LayoutInput out = in;
    std::swap(out.top.width, out.top.length);
    std::swap(out.surface.table.width, out.surface.table.length);
    std::swap(out.seamsX, out.seamsY);
    std::swap(out.besideX, out.besideY);
    out.surface.field = exchanged(in.surface.field);
    return out;
}

Layout exchanged(Layout layout, Shape shape) {
    layout.shape = shape;
    for (FreshArea& a : layout.areas) {
        a.fresh = exchanged(a.fresh);
        a.table = exchanged(a.table);
        a.field = exchanged(a.field);
    }
    return layout;
}

} // namespace bastewright
