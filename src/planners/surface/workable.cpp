#include "planners/surface/workable.h"

namespace bastewright {
namespace {

bool open(const std::vector<Side>& closed, Side s) {
    return std::ranges::find(closed, s) == closed.end();
}

Side turned(Side drawn) {
    switch (drawn) {
    case Side::left:
        return Side::head;
    case Side::foot:
        return Side::left;
    case Side::right:
        return Side::foot;
    case Side::head:
        return Side::right;
    }
    return drawn;
}

/// True where every place of `span` (across a table of this size) is within reach of one of two
/// sides.
bool reached(Interval span, Length size, bool nearOpen, bool farOpen, Length reach) {
    if (nearOpen && span.hi <= reach)
        return true;
    if (farOpen && size - span.lo <= reach)
        return true;
    return nearOpen && farOpen && size <= 2 * reach;
}

} // namespace

std::vector<Side> closedSides(std::span<const Side> walls, bool quiltLengthAlongLength) {
    std::vector<Side> out;
    for (const Side s : kSides)
        if (std::ranges::any_of(
                walls, [&](Side w) { return (quiltLengthAlongLength ? turned(w) : w) == s; }))
            out.push_back(s);
    return out;
}

Workable workable(const Arrangement& surface, const Room& room, bool quiltLengthAlongLength,
                  Length reach) {
    Workable out;
    out.table = quiltLengthAlongLength ? Size{surface.width, surface.length}
                                       : Size{surface.length, surface.width};
    const Rect whole{{}, {}, out.table.width, out.table.length};
    if (surface.floor) {
        out.field = whole;
        return out;
    }
    out.closed = closedSides(room.walls, quiltLengthAlongLength);
    const bool head = open(out.closed, Side::head), foot = open(out.closed, Side::foot);
    const bool left = open(out.closed, Side::left), right = open(out.closed, Side::right);
    const Rect inside = whole.grown(-room.inset);
    if (inside.empty())
        return out;
    if (reached(inside.y(), whole.length(), head, foot, reach) ||
        reached(inside.x(), whole.width(), left, right, reach)) {
        out.field = inside;
        return out;
    }
    // Not all of it: the largest strip along one open side.
    out.whole = false;
    const auto consider = [&](bool isOpen, Rect strip) {
        strip = intersection(strip, inside);
        if (isOpen && !strip.empty() &&
            (out.field.empty() || areaSquareInches(strip) > areaSquareInches(out.field)))
            out.field = strip;
    };
    consider(foot, {whole.x0, whole.y1 - reach, whole.x1, whole.y1});
    consider(head, {whole.x0, whole.y0, whole.x1, reach});
    consider(right, {whole.x1 - reach, whole.y0, whole.x1, whole.y1});
    consider(left, {whole.x0, whole.y0, reach, whole.y1});
    return out;
}

Length commonReach(std::span<const Helper> helpers) {
    if (helpers.empty())
        return Length::inches(27);
    std::vector<Length> reaches;
    for (const Helper& h : helpers)
        reaches.push_back(h.reach);
    std::ranges::sort(reaches, std::greater<>{});
    return reaches[(reaches.size() - 1) / 2];
}

} // namespace bastewright
