#include "planners/points/grid_layout.h"

#include "planners/points/cover_task.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

/// The pattern in every block, where the block is whole and the place is allowed.
Layout patternEverywhere(const Rules& rules, const BlockFrame& frame, const TilePattern& tile) {
    Layout out;
    for (int row = 0; row < frame.rows; row += tile.down)
        for (int column = 0; column < frame.columns; column += tile.across)
            for (const Spot p : tile.points) {
                const Spot at{frame.first.x + column * frame.pitchX + p.x,
                              frame.first.y + row * frame.pitchY + p.y};
                if (at.x <= frame.lastX() && at.y <= frame.lastY() &&
                    (rules.pin.angleAt(at) || rules.pin.mostRoom(at).room >= tile.room - 1e-6))
                    out.pins.push_back({at, false});
            }
    return out;
}

/// One stretch of border with the blocks beside it; `period` is how it repeats along its side.
struct Stretch {
    Field field;
    Spot period;
};

Spots copies(const Stretch& s, Spot p, double reach) {
    const double length = std::max(std::abs(s.period.x), std::abs(s.period.y));
    const int n = static_cast<int>(std::ceil(reach / length)) + 1;
    Spots out;
    for (int i = -n; i <= n; ++i)
        if (const Spot q{p.x + i * s.period.x, p.y + i * s.period.y}; s.field.contains(q, reach))
            out.push_back(q);
    return out;
}

bool within(double v, double from, double period) {
    return v >= from - 1e-7 && v < from + period - 1e-7;
}

/// Points that complete one stretch, given the pattern in the blocks.
Spots completeStretch(const Rules& rules, const Layout& blocks, const Stretch& s, int steps,
                      std::stop_token stop) {
    CoverTask task;
    task.field = s.field;
    task.radius = rules.radius;
    task.gap = rules.gap;
    task.steps = steps;
    const auto inPeriod = [&](Spot p) {
        return s.period.x > 0 ? within(p.x, s.field.x0, s.period.x)
                              : within(p.y, s.field.y0, s.period.y);
    };
    for (const auto& pin : blocks.pins)
        if (inPeriod(pin.at))
            for (const Spot q : copies(s, pin.at, rules.radius))
                task.fixed.push_back(q);
    Spots own;
    for (const Spot p : rules.places(s.field))
        if (inPeriod(p)) {
            own.push_back(p);
            task.orbits.push_back(copies(s, p, rules.radius));
        }
    // What cannot be covered beside the pattern is left to the repair, which may move its points.
    const CoverAnswer answer = solve(task, stop);
    Spots out;
    if (answer.found)
        for (const int c : answer.choice)
            out.push_back(own[static_cast<std::size_t>(c)]);
    return out;
}

/// The four stretches; none along a side too short to repeat.
std::vector<Stretch> stretches(const Rules& rules, const BlockFrame& f, const TilePattern& tile) {
    std::vector<Stretch> out;
    const Field& top = rules.top();
    if (f.rows >= 2 * tile.down) {
        const double period = tile.down * f.pitchY;
        const int row = std::max(0, (f.rows / tile.down - 1) / 2) * tile.down;
        const double y = f.first.y + row * f.pitchY;
        out.push_back({{top.x0, y, f.first.x + f.blockX, y + period}, {0, period}});
        out.push_back({{f.lastX() - f.blockX, y, top.x1, y + period}, {0, period}});
    }
    if (f.columns >= 2 * tile.across) {
        const double period = tile.across * f.pitchX;
        const int column = std::max(0, (f.columns / tile.across - 1) / 2) * tile.across;
        const double x = f.first.x + column * f.pitchX;
        out.push_back({{x, top.y0, x + period, f.first.y + f.blockY}, {period, 0}});
        out.push_back({{x, f.lastY() - f.blockY, x + period, top.y1}, {period, 0}});
    }
    return out;
}

/// The points of a stretch, repeated along its whole side.
void repeatStretch(Layout& layout, const Rules& rules, const BlockFrame& f, const Stretch& s,
                   const Spots& points) {
    for (const Spot p : points) {
        const bool along = s.period.x > 0;
        const double period = along ? s.period.x : s.period.y;
        const double from = along ? f.first.x : f.first.y, to = along ? f.lastX() : f.lastY();
        const double at = along ? p.x : p.y;
        for (double k = std::ceil((from - at) / period - 1e-9); at + k * period <= to + 1e-9; ++k) {
            const Spot q{p.x + k * s.period.x, p.y + k * s.period.y};
            const bool near =
                std::any_of(layout.pins.begin(), layout.pins.end(), [&](const auto& o) {
                    return distanceSquared(o.at, q) < squared(rules.gap - 1e-7);
                });
            if (!near && rules.pin.angleAt(q))
                layout.pins.push_back({q, true});
        }
    }
}

} // namespace

std::optional<BlockFrame> frameOf(const Job& job) {
    if (!job.top.grid)
        return {};
    const BlockGrid& g = *job.top.grid;
    const Rect area = topRect(job.top);
    BlockFrame f;
    f.first = {((area.width() - g.width()) / 2 + g.border).in(),
               ((area.length() - g.length()) / 2 + g.border).in()};
    f.blockX = g.block.in();
    f.blockY = g.blockHeight().in();
    f.pitchX = f.blockX + g.sashing.in();
    f.pitchY = f.blockY + g.sashing.in();
    f.columns = g.columns;
    f.rows = g.rows;
    return f;
}

std::optional<GridLayout> gridLayout(const Rules& rules, const BlockFrame& frame, int effort,
                                     std::stop_token stop) {
    std::optional<GridLayout> best;
    TileRequest request;
    request.across =
        std::max(1, std::min(frame.columns, static_cast<int>(std::floor(12 / frame.pitchX))));
    request.down =
        std::max(1, std::min(frame.rows, static_cast<int>(std::floor(12 / frame.pitchY))));
    request.column = frame.columns >= request.across + 2 ? 1 : 0;
    request.row = frame.rows >= request.down + 2 ? 1 : 0;
    request.steps = 1500 * (1 + effort);
    for (const TilePattern& tile : tilePatterns(rules, frame, request, stop)) {
        GridLayout next{patternEverywhere(rules, frame, tile), tile};
        const Layout blocks = next.layout;
        for (const Stretch& s : stretches(rules, frame, tile))
            repeatStretch(next.layout, rules, frame, s,
                          completeStretch(rules, blocks, s, 1000 * (1 + effort), stop));
        repair(next.layout, rules, 600);
        prune(next.layout, rules);
        if (!best || next.layout.pins.size() < best->layout.pins.size())
            best = std::move(next);
        if (stop.stop_requested())
            break;
    }
    return best;
}

} // namespace bastewright::points
