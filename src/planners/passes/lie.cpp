#include "planners/passes/holds.h"
#include "planners/passes/passes.h"
#include "planners/rolls/rolls.h"
#include "planners/surface/closed_sides.h"
#include "planners/surface/reachable.h"
#include "ways/way.h"

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

bool holds(const std::vector<Side>& sides, Side side) {
    return std::ranges::find(sides, side) != sides.end();
}

/// One axis of a table; what goes on past a wall lies rolled on the edge and takes its room.
AxisTable axisTable(const PassRequest& request, Length size, Length backing, Length top,
                    bool wallLo, bool wallHi) {
    const Basting& basting = request.job.basting;
    // A patch lies on the table with all of it, not with its middle alone.
    const bool whole = wayOf(request.job).point.isPatch();
    const Length half = whole ? basting.spacing / 2 : Length{};
    const Length inset = request.setting.room.inset, rim = inset + half;
    const Length room =
        std::max(inset, rollDiameter(backing, sandwichThickness(request.job.batting))) + half;
    const Length overage = (backing - top) / 2;
    return {.size = size,
            .insetLo = wallLo ? room : rim,
            .insetHi = wallHi ? room : rim,
            .pastLo = wallLo ? overage : Length{},
            .pastHi = wallHi ? overage : Length{},
            .anchor = kAnchor,
            .row = wallLo || wallHi || whole ? Length{} : basting.spacing};
}

} // namespace

bool isOpen(const Lie& lie, Side side) {
    return !holds(lie.closed, side);
}

std::vector<Side> openSides(const Lie& lie) {
    return openSides(lie.closed);
}

SeamLines seamLines(const Top& top) {
    std::set<Length> x, y;
    const Rect area = topRect(top);
    // Only seams that cross most of the top show people where to stop.
    for (const Segment& s : seamsOf(top)) {
        if (s.from.x == s.to.x && abs(s.to.y - s.from.y) * 4 >= area.length() * 3)
            x.insert(s.from.x);
        if (s.from.y == s.to.y && abs(s.to.x - s.from.x) * 4 >= area.width() * 3)
            y.insert(s.from.y);
    }
    return {{x.begin(), x.end()}, {y.begin(), y.end()}};
}

Board boardOf(const PassRequest& request) {
    // Between patches is where they end, wherever seams are.
    const SeamLines seams =
        wayOf(request.job).point.isPatch() ? SeamLines{} : seamLines(request.job.top);
    const Size& top = request.layers.top;
    std::vector<Point> points;
    std::vector<Length> x, y;
    for (const PlacedPoint& p : request.points) {
        points.push_back(p.at);
        x.push_back(p.at.x);
        y.push_back(p.at.y);
    }
    const Length spacing = request.job.basting.spacing;
    return boardWith(axisLines(std::move(x), top.width, spacing, seams.x),
                     axisLines(std::move(y), top.length, spacing, seams.y), std::move(points));
}

std::vector<Side> sidesAtWalls(const Room& room, const std::vector<Side>& closed) {
    return room.wallGap >= kHangingRoom ? std::vector<Side>{} : closed;
}

Lie lieOf(const PassRequest& request, const Arrangement& surface, bool quiltLengthAlongLength) {
    const Room& room = request.setting.room;
    const LayerSizes& layers = request.layers;
    Lie out;
    out.floor = surface.floor;
    Size table = quiltLengthAlongLength ? Size{surface.width, surface.length}
                                        : Size{surface.length, surface.width};
    if (surface.floor)
        table = {std::max(layers.backing.width, layers.top.width),
                 std::max(layers.backing.length, layers.top.length)};
    else
        out.closed = closedSides(room.walls, quiltLengthAlongLength);
    out.reach =
        request.reach.value_or(farthestReach(request.setting.helpers, request.job.basting.with));
    const std::vector<Side> walls = sidesAtWalls(room, out.closed);
    out.x = axisTable(request, table.width, layers.backing.width, layers.top.width,
                      holds(walls, Side::left), holds(walls, Side::right));
    out.y = axisTable(request, table.length, layers.backing.length, layers.top.length,
                      holds(walls, Side::head), holds(walls, Side::foot));
    return out;
}

SurfacePlan surfacePlan(const PassChoice& choice, int number) {
    return {.name = choice.surface.name,
            .number = number,
            .length = choice.surface.length,
            .width = choice.surface.width,
            .floor = choice.surface.floor,
            .quiltLengthAlongLength = choice.quiltLengthAlongLength,
            .tables = choice.surface.tables,
            .closed = choice.lie.closed};
}

std::vector<Segment> jointsUnderQuilt(const SurfacePlan& surface, const Rect& table) {
    // Turned with the quilt's length along the surface's: drawn left is the quilt's head, drawn
    // foot its left.
    const auto turned = [&](Point p) {
        return surface.quiltLengthAlongLength ? Point{surface.width - p.y, p.x} : p;
    };
    const auto moved = [&](Point p) { return Point{p.x + table.x0, p.y + table.y0}; };
    std::vector<Segment> out;
    for (const Segment& s : jointsBetween(surface.tables))
        out.push_back({moved(turned(s.from)), moved(turned(s.to))});
    return out;
}

} // namespace bastewright
