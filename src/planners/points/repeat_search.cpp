#include "planners/points/repeat_search.h"

#include "planners/points/cover_task.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

/// Where something may be added to the tile: near the border, or anywhere where the tile does not
/// repeat.
bool besideBorder(const Rules& rules, const RepeatFrame& frame, int place, Spot at) {
    const double deep = 1.2 * rules.radius;
    const auto near = [&](const AxisKinds& axis, int kind, double v) {
        if (axis.tiles < 3 || axis.kinds[index(kind)].periodic)
            return axis.tiles < 3;
        return kind == 0 ? v <= axis.first + deep : v >= axis.end - deep;
    };
    return near(frame.x, frame.xKind(place), at.x) || near(frame.y, frame.yKind(place), at.y);
}

/// The stretch and as much beyond it as its points reach, in the directions asked for.
Field reached(const Rules& rules, const Field& stretch, bool x, bool y) {
    const Field& top = rules.top();
    Field f = stretch;
    if (x) {
        f.x0 = std::max(top.x0, f.x0 - rules.radius);
        f.x1 = std::min(top.x1, f.x1 + rules.radius);
    }
    if (y) {
        f.y0 = std::max(top.y0, f.y0 - rules.radius);
        f.y1 = std::min(top.y1, f.y1 + rules.radius);
    }
    return f;
}

} // namespace

RepeatSearch::RepeatSearch(const Rules& rules, const RepeatFrame& frame)
    : rules_{rules}
    , frame_{frame}
    , coarse_{raster(nullptr)}
    , fewest_(index(frame.count()), 0) {}

RepeatSearch::Places RepeatSearch::places(const Places* coarse) const {
    Places out{std::vector<Spots>(index(frame_.count())), std::vector<Spots>(index(frame_.count()))};
    for (int place = 0; place < frame_.count(); ++place) {
        if (place == frame_.inside())
            continue;
        const Field f = frame_.field(place);
        const double raster =
            coarse != nullptr ? rules_.rasterFor(f, coarse->all[index(place)].size()) : rules_.step;
        for (const Spot p : rules_.places(f, raster)) {
            if (betweenStretches(p, f))
                continue;
            out.all[index(place)].push_back(p);
            if (besideBorder(rules_, frame_, place, p))
                out.border[index(place)].push_back(p);
        }
    }
    return out;
}

/// On a line that two stretches share. It belongs to the stretch that begins there, but not where
/// what lies between border and border is its own image, as it is without sashing: the image of such
/// a place would belong to another stretch than the others' images.
bool RepeatSearch::betweenStretches(Spot p, const Field& stretch) const {
    const Field& top = rules_.top();
    const auto on = [](double v, double line, double edge) {
        return std::abs(v - line) < 1e-7 && std::abs(line - edge) > 1e-7;
    };
    const auto begins = [&](const AxisKinds& axis, double v, double line, double edge) {
        return !rules_.pin.seamless() && axis.symmetric() && on(v, line, edge);
    };
    return on(p.x, stretch.x1, top.x1) || on(p.y, stretch.y1, top.y1) ||
           begins(frame_.x, p.x, stretch.x0, top.x0) || begins(frame_.y, p.y, stretch.y0, top.y0);
}

RepeatSearch::Raster RepeatSearch::raster(const Places* coarse) const {
    Places from = places(coarse);
    RepeatImages images{rules_.top(), frame_, from.all, rules_.radius};
    return {std::move(from), std::move(images)};
}

/// A side that is its own image, mirrored, need not have become so: then its corners are not either.
bool RepeatSearch::sidesHold(const RepeatLayout& layout, Flip flip) const {
    for (int place = 0; place < frame_.count(); ++place)
        if (isSide(place) && !fine_->images.holds(flip, place, layout.points))
            return false;
    return true;
}

bool RepeatSearch::copied(RepeatLayout& layout, int place, const Raster& raster,
                          const std::vector<Flip>& flips) const {
    const auto source = raster.images.sourceOf(place, flips);
    if (!source)
        return false;
    layout.points[index(place)] =
        raster.images.image(source->place, layout.points[index(source->place)], source->flip);
    layout.open[index(place)] = layout.open[index(source->place)];
    return true;
}

int RepeatSearch::times(int place) const {
    return frame_.x.kinds[index(frame_.xKind(place))].times *
           frame_.y.kinds[index(frame_.yKind(place))].times;
}

bool RepeatSearch::permitted(Spot at, double room) const {
    return rules_.pin.angleAt(at) ||
           (room < rules_.pin.clear() && rules_.pin.mostRoom(at).room >= room - 1e-6);
}

Spots RepeatSearch::fromTile(int place, const TilePattern& tile) const {
    const Spot corner{
        frame_.x.first + frame_.x.kinds[index(frame_.xKind(place))].tile * frame_.x.tile,
        frame_.y.first + frame_.y.kinds[index(frame_.yKind(place))].tile * frame_.y.tile};
    Spots out;
    for (const Spot p : tile.points) {
        const Spot at = corner + p;
        // Beyond the last block there is no sashing.
        if (at.x < frame_.x.end + 1e-7 && at.y < frame_.y.end + 1e-7 && permitted(at, tile.room))
            out.push_back(at);
    }
    return out;
}

/// A point of a place once it repeats as its kind does, as far as it lies in a field.
Spots RepeatSearch::along(int place, Spot at, const Field& near) const {
    const auto shifts = [](const AxisKinds& axis, bool periodic, double v, double lo, double hi) {
        std::vector<double> out;
        if (!periodic)
            return std::vector<double>{0};
        for (double n = std::ceil((lo - v) / axis.tile - 1e-9); v + n * axis.tile <= hi + 1e-9; ++n)
            out.push_back(n * axis.tile);
        return out;
    };
    Spots out;
    for (const double dy : shifts(frame_.y, frame_.periodicY(place), at.y, near.y0, near.y1))
        for (const double dx : shifts(frame_.x, frame_.periodicX(place), at.x, near.x0, near.x1))
            if (const Spot p{at.x + dx, at.y + dy}; near.contains(p, 1e-9))
                out.push_back(p);
    return out;
}

/// The points of all other kinds of place near the stretch of one.
void RepeatSearch::others(const RepeatLayout& layout, int place, const Field& near,
                          Spots& out) const {
    const auto copies = [&](const AxisKinds& axis, int kind) {
        return axis.copies(kind, 2 * rules_.radius);
    };
    for (const auto& [sy, ky] : copies(frame_.y, frame_.yKind(place)))
        for (const auto& [sx, kx] : copies(frame_.x, frame_.xKind(place))) {
            const int other = ky * static_cast<int>(frame_.x.kinds.size()) + kx;
            if (other == place)
                continue;
            const Spot shift{sx - frame_.x.kinds[index(kx)].tile * frame_.x.tile,
                             sy - frame_.y.kinds[index(ky)].tile * frame_.y.tile};
            for (const Spot p : layout.points[index(other)])
                if (near.contains(p + shift))
                    out.push_back(p + shift);
        }
}

/// What the neighbours of a corner would have in it if they went on: where they end, it may need
/// just that.
Spots RepeatSearch::continued(const RepeatLayout& layout, int place) const {
    const Field f = frame_.field(place);
    Spots out;
    if (!isCorner(place))
        return out;
    for (int other = 0; other < frame_.count(); ++other) {
        const bool row = frame_.yKind(other) == frame_.yKind(place) && frame_.periodicX(other);
        const bool column = frame_.xKind(other) == frame_.xKind(place) && frame_.periodicY(other);
        if (!row && !column)
            continue;
        for (const Spot p : layout.points[index(other)])
            for (const Spot q : along(other, p, f))
                if (q.x < f.x1 - 1e-7 && q.y < f.y1 - 1e-7 && rules_.pin.angleAt(q))
                    out.push_back(q);
    }
    return out;
}

bool RepeatSearch::extend(RepeatLayout& layout, int place, const Places& places, int steps,
                          std::stop_token stop) const {
    CoverTask task;
    // Sides are there already when corners are completed, and may have patterns of their own.
    task.fields = {reached(rules_, frame_.field(place), isCorner(place) && frame_.x.tiles > 2,
                           isCorner(place) && frame_.y.tiles > 2)};
    task.radius = rules_.radius;
    task.gap = rules_.gap;
    task.steps = steps;
    const Field near = task.fields.front().grown(rules_.radius);
    others(layout, place, near, task.fixed);
    for (const Spot p : layout.points[index(place)])
        for (const Spot q : along(place, p, near))
            task.fixed.push_back(q);
    Spots from = places.border[index(place)];
    for (const Spot p : continued(layout, place))
        from.push_back(p);
    for (const Spot p : from)
        task.orbits.push_back(along(place, p, near));
    const CoverAnswer answer = solve(task, stop);
    if (!answer.found)
        return false;
    layout.open[index(place)] = !answer.hopeless.empty();
    for (const int c : answer.choice)
        layout.points[index(place)].push_back(from[index(c)]);
    return true;
}

void RepeatSearch::renew(RepeatLayout& layout, int place, const Places& places, int steps,
                         std::stop_token stop) const {
    if (layout.tile.room < rules_.pin.clear() - 1e-9)
        return; // seams too dense: one way to breach is enough
    CoverTask task;
    task.fields = {reached(rules_, frame_.field(place), !frame_.periodicX(place),
                           !frame_.periodicY(place))};
    task.radius = rules_.radius;
    task.gap = rules_.gap;
    task.steps = steps;
    const Field near = task.fields.front().grown(rules_.radius);
    others(layout, place, near, task.fixed);
    Spots from = layout.points[index(place)];
    const std::size_t own = from.size();
    if (!layout.open[index(place)])
        task.below = static_cast<int>(own);
    Spots more = continued(layout, place);
    more.insert(more.end(), places.all[index(place)].begin(), places.all[index(place)].end());
    const auto ownEnd = static_cast<std::ptrdiff_t>(own);
    for (const Spot p : more)
        if (std::find(from.begin(), from.begin() + ownEnd, p) == from.begin() + ownEnd)
            from.push_back(p);
    for (std::size_t i = 0; i < from.size(); ++i) {
        task.orbits.push_back(along(place, from[i], near));
        if (i < own)
            task.start.push_back(static_cast<int>(i));
    }
    const CoverAnswer answer = solve(task, stop);
    if (!answer.found || !answer.hopeless.empty())
        return;
    layout.open[index(place)] = false;
    layout.points[index(place)].clear();
    for (const int c : answer.choice)
        layout.points[index(place)].push_back(from[index(c)]);
}

void RepeatSearch::sum(RepeatLayout& layout) const {
    layout.count = 0;
    for (int place = 0; place < frame_.count(); ++place)
        layout.count += times(place) * static_cast<int>(layout.points[index(place)].size());
}

RepeatLayout RepeatSearch::begun(const TilePattern& tile) const {
    RepeatLayout out;
    out.tile = tile;
    for (int place = 0; place < frame_.count(); ++place)
        out.points.push_back(fromTile(place, tile));
    out.open.assign(out.points.size(), false);
    return out;
}

std::optional<int> RepeatSearch::estimate(const TilePattern& tile, int steps, int most) {
    RepeatLayout out = begun(tile);
    const std::vector<Flip> flips = coarse_.images.flipsOf(tile);
    sum(out);
    int hoped = out.count;
    for (int place = 0; place < frame_.count(); ++place)
        if (isSide(place))
            hoped += times(place) * (fewest_[index(place)] -
                                     static_cast<int>(out.points[index(place)].size()));
    for (int place = 0; place < frame_.count(); ++place) {
        if (!isSide(place))
            continue;
        if (hoped > most ||
            (!copied(out, place, coarse_, flips) && !extend(out, place, coarse_.from, steps, {})))
            return {};
        const int found = static_cast<int>(out.points[index(place)].size());
        hoped += times(place) * (found - fewest_[index(place)]);
        int& fewest = fewest_[index(place)];
        fewest = fewest == 0 ? found : std::min(fewest, found);
    }
    sum(out);
    return out.count <= most ? std::optional{out.count} : std::nullopt;
}

std::optional<RepeatLayout> RepeatSearch::complete(const TilePattern& tile, int steps,
                                                   std::stop_token stop) const {
    RepeatLayout out = begun(tile);
    for (const bool sides : {true, false})
        for (int place = 0; place < frame_.count(); ++place)
            if (place != frame_.inside() && isSide(place) == sides &&
                !extend(out, place, coarse_.from, steps, stop))
                return {};
    sum(out);
    return out;
}

std::optional<RepeatLayout> RepeatSearch::adapted(const TilePattern& tile, int steps,
                                                  std::stop_token stop) {
    if (!fine_)
        fine_ = raster(&coarse_.from);
    const Places& from = fine_->from;
    RepeatLayout out = begun(tile);
    std::vector<Flip> flips = fine_->images.flipsOf(tile);
    for (const bool sides : {true, false}) {
        if (!sides)
            std::erase_if(flips, [&](Flip flip) { return !sidesHold(out, flip); });
        const auto each = [&](auto&& f) {
            for (int place = 0; place < frame_.count(); ++place)
                if (place != frame_.inside() && isSide(place) == sides && !f(place))
                    return false;
            return true;
        };
        // A point of a side counts as often as the side has tiles, one of a corner once.
        const int worth = sides ? steps : steps / 2;
        if (!each([&](int place) {
                return copied(out, place, *fine_, flips) || extend(out, place, from, worth, stop);
            }))
            return {};
        each([&](int place) {
            if (!copied(out, place, *fine_, flips))
                renew(out, place, from, worth, stop);
            return true;
        });
    }
    sum(out);
    return out;
}

Layout RepeatSearch::laidOut(const RepeatLayout& layout) const {
    Layout out;
    Buckets near{rules_.top(), rules_.spacing};
    const auto tiles = [](const AxisKinds& axis, int kind) {
        const auto& k = axis.kinds[index(kind)];
        std::vector<double> shifts;
        for (int i = 0; i < k.times; ++i)
            shifts.push_back(i * axis.tile);
        return shifts;
    };
    for (int place = 0; place < frame_.count(); ++place) {
        const Spots pattern = fromTile(place, layout.tile);
        for (const Spot p : layout.points[index(place)]) {
            const bool loose = std::find(pattern.begin(), pattern.end(), p) == pattern.end();
            for (const double dy : tiles(frame_.y, frame_.yKind(place)))
                for (const double dx : tiles(frame_.x, frame_.xKind(place))) {
                    const Spot at = p + Spot{dx, dy};
                    if (!permitted(at, layout.tile.room) ||
                        near.anyNear(at, rules_.gap - 1e-7, [](int, Spot) { return true; }))
                        continue;
                    near.add(static_cast<int>(out.pins.size()), at);
                    out.pins.push_back({at, loose});
                }
        }
    }
    return out;
}

} // namespace bastewright::points
