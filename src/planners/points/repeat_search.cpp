#include "planners/points/repeat_search.h"

#include "planners/points/cover_task.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

/// Where something may be added: near the border, or anywhere where the tile
/// does not repeat.
Field reachOf(const Rules& rules, const RepeatFrame& frame, int place) {
    Field f = frame.field(place);
    const double deep = 1.2 * rules.radius;
    if (frame.x.tiles > 2 && !frame.periodicX(place)) {
        if (frame.xKind(place) == 0)
            f.x1 = std::min(f.x1, frame.x.first + deep);
        else
            f.x0 = std::max(f.x0, frame.x.end - deep);
    }
    if (frame.y.tiles > 2 && !frame.periodicY(place)) {
        if (frame.yKind(place) == 0)
            f.y1 = std::min(f.y1, frame.y.first + deep);
        else
            f.y0 = std::max(f.y0, frame.y.end - deep);
    }
    return f;
}

} // namespace

RepeatSearch::RepeatSearch(const Rules& rules, const RepeatFrame& frame)
    : rules_{rules}
    , frame_{frame} {
    double x = 0;
    for (int place = 0; place < frame.count(); ++place) {
        const Field f = frame.field(place);
        shifts_.push_back({x - f.x0, -f.y0});
        sheets_.push_back({x, 0, x + f.width(), f.length()});
        x += f.width() + 4 * rules.radius;
    }
    for (int place = 0; place < frame.count(); ++place)
        additions_.push_back(additions(place));
}

RepeatSearch::Way RepeatSearch::way(int place) const {
    if (place == kTile)
        return {};
    return {frame_.periodicX(place), frame_.periodicY(place), frame_.xKind(place),
            frame_.yKind(place)};
}

Spot RepeatSearch::fromFirstTile(const Way& w, Spot at) const {
    return {at.x - (w.alongX ? frame_.x.kinds[index(w.kindX)].tile * frame_.x.tile : 0.0),
            at.y - (w.alongY ? frame_.y.kinds[index(w.kindY)].tile * frame_.y.tile : 0.0)};
}

Spot RepeatSearch::onTile(const Way& w, Spot base, int kindX, int kindY) const {
    return {base.x + (w.alongX ? frame_.x.kinds[index(kindX)].tile * frame_.x.tile : 0.0),
            base.y + (w.alongY ? frame_.y.kinds[index(kindY)].tile * frame_.y.tile : 0.0)};
}

bool RepeatSearch::permitted(const Way& w, Spot at, double room) const {
    if ((w.alongX && at.x > frame_.x.end + 1e-7) || (w.alongY && at.y > frame_.y.end + 1e-7))
        return false; // beyond the last block there is no sashing
    return rules_.pin.angleAt(at) ||
           (room < rules_.pin.clear() && rules_.pin.mostRoom(at).room >= room - 1e-6);
}

/// Where a point is looked for on a sheet: in every tile near it, or where it
/// lies.
std::vector<AxisKinds::Copy> RepeatSearch::copies(const AxisKinds& axis, int sheetKind, bool along,
                                                  int own) const {
    if (along)
        return axis.copies(sheetKind, rules_.radius);
    if (axis.kinds[index(sheetKind)].periodic)
        return {}; // what is added at a side is not counted on inside
    return {{0.0, own}};
}

RepeatSearch::Offer RepeatSearch::offer(int place, Spot at, double room) const {
    const Way w = way(place);
    const Spot base = fromFirstTile(w, at);
    Offer out{place, at, {}, 0};
    // Whether it is allowed depends on the kinds of tile it falls in, not on the
    // single tile.
    std::vector<signed char> known(index(frame_.count()), -1);
    const auto allowed = [&](int kx, int ky) {
        auto& k = known[index(ky) * frame_.x.kinds.size() + index(kx)];
        if (k < 0)
            k = permitted(w, onTile(w, base, kx, ky), room) ? 1 : 0;
        return k > 0;
    };
    for (int sheet = 0; sheet < frame_.count(); ++sheet) {
        const Field near = frame_.field(sheet).grown(rules_.radius);
        for (const auto& [sy, ky] : copies(frame_.y, frame_.yKind(sheet), w.alongY, w.kindY)) {
            if (base.y + sy < near.y0 || base.y + sy > near.y1)
                continue;
            for (const auto& [sx, kx] : copies(frame_.x, frame_.xKind(sheet), w.alongX, w.kindX))
                if (const Spot p = base + Spot{sx, sy}; near.contains(p) && allowed(kx, ky))
                    out.images.push_back(p + shifts_[index(sheet)]);
        }
    }
    const auto kinds = [](const AxisKinds& axis, bool along, int own) {
        std::vector<std::pair<int, int>> all;
        for (int k = 0; along && k <= axis.last(); ++k)
            all.emplace_back(k, axis.kinds[index(k)].times);
        if (!along)
            all.emplace_back(own, 1);
        return all;
    };
    for (const auto& [ky, ny] : kinds(frame_.y, w.alongY, w.kindY))
        for (const auto& [kx, nx] : kinds(frame_.x, w.alongX, w.kindX))
            if (allowed(kx, ky))
                out.times += nx * ny;
    return out;
}

Spots RepeatSearch::everywhere(int place, Spot at, double room) const {
    const Way w = way(place);
    const Spot base = fromFirstTile(w, at);
    Spots out;
    for (int row = 0; row < (w.alongY ? frame_.y.tiles : 1); ++row)
        for (int column = 0; column < (w.alongX ? frame_.x.tiles : 1); ++column)
            if (const Spot p = base + Spot{column * frame_.x.tile, row * frame_.y.tile};
                permitted(w, p, room))
                out.push_back(p);
    return out;
}

std::vector<RepeatSearch::Offer> RepeatSearch::additions(int place) const {
    std::vector<Offer> out;
    if (place == frame_.inside())
        return out;
    const Field f = frame_.field(place);
    for (const Spot p : rules_.places(reachOf(rules_, frame_, place))) {
        // A stretch holds its head and left ends only.
        if ((p.x > f.x1 - 1e-7 && f.x1 < rules_.top().x1 - 1e-7) ||
            (p.y > f.y1 - 1e-7 && f.y1 < rules_.top().y1 - 1e-7))
            continue;
        if (Offer o = offer(place, p, rules_.pin.clear()); o.times > 0)
            out.push_back(std::move(o));
    }
    return out;
}

std::vector<RepeatSearch::Offer> RepeatSearch::offersOf(const TilePattern& tile) const {
    std::vector<Offer> out;
    for (const Spot p : tile.points)
        if (Offer o = offer(kTile, Spot{frame_.x.first, frame_.y.first} + p, tile.room);
            o.times > 0)
            out.push_back(std::move(o));
    return out;
}

bool RepeatSearch::stage(int place, std::vector<Offer>& chosen, int steps,
                         std::stop_token stop) const {
    const Field& sheet = sheets_[index(place)];
    CoverTask task;
    task.fields = {sheet};
    task.radius = rules_.radius;
    task.gap = rules_.gap;
    task.steps = steps;
    for (const Offer& o : chosen)
        for (const Spot p : o.images)
            if (sheet.contains(p, rules_.radius))
                task.fixed.push_back(p);
    const auto& from = additions_[index(place)];
    for (const Offer& o : from) {
        Spots here;
        for (const Spot p : o.images)
            if (sheet.contains(p, rules_.radius))
                here.push_back(p);
        task.orbits.push_back(std::move(here));
    }
    const CoverAnswer answer = solve(task, stop);
    if (!answer.found)
        return false;
    for (const int c : answer.choice)
        chosen.push_back(from[index(c)]);
    return true;
}

int RepeatSearch::openPlaces(int place, const std::vector<Offer>& chosen) const {
    const Field& sheet = sheets_[index(place)];
    Buckets near{sheet.grown(rules_.radius), rules_.radius};
    for (const Offer& o : chosen)
        for (const Spot p : o.images)
            if (sheet.contains(p, rules_.radius))
                near.add(0, p);
    const double pitch = rules_.radius / 5;
    int open = 0;
    for (double y = sheet.y0; y <= sheet.y1; y += pitch)
        for (double x = sheet.x0; x <= sheet.x1; x += pitch)
            open += !near.anyNear({x, y}, rules_.radius, [](int, Spot) { return true; });
    return open;
}

std::optional<RepeatSearch::Estimate> RepeatSearch::estimate(const TilePattern& tile,
                                                             int steps) const {
    std::vector<Offer> chosen = offersOf(tile);
    Estimate out;
    for (int place = 0; place < frame_.count(); ++place)
        if (isSide(place))
            out.open += openPlaces(place, chosen);
    for (int place = 0; place < frame_.count(); ++place)
        if (isSide(place) && !stage(place, chosen, steps, {}))
            return {};
    for (const Offer& o : chosen)
        out.count += o.times;
    return out;
}

std::optional<RepeatLayout> RepeatSearch::complete(const TilePattern& tile, int steps,
                                                   std::stop_token stop) const {
    std::vector<Offer> chosen = offersOf(tile);
    for (const bool sides : {true, false})
        for (int place = 0; place < frame_.count(); ++place)
            if (place != frame_.inside() && isSide(place) == sides &&
                !stage(place, chosen, steps, stop))
                return {};
    RepeatLayout out;
    out.tile = tile;
    out.added.resize(index(frame_.count()));
    for (const Offer& o : chosen) {
        out.count += o.times;
        if (o.place != kTile)
            out.added[index(o.place)].push_back(o.at);
    }
    return out;
}

Layout RepeatSearch::laidOut(const RepeatLayout& layout) const {
    Layout out;
    Buckets near{rules_.top(), rules_.spacing};
    const auto put = [&](int place, Spot at, double room, bool loose) {
        for (const Spot p : everywhere(place, at, room))
            if (!near.anyNear(p, rules_.gap - 1e-7, [](int, Spot) { return true; })) {
                near.add(static_cast<int>(out.pins.size()), p);
                out.pins.push_back({p, loose});
            }
    };
    for (const Spot p : layout.tile.points)
        put(kTile, Spot{frame_.x.first, frame_.y.first} + p, layout.tile.room, false);
    for (int place = 0; place < frame_.count(); ++place)
        for (const Spot p : layout.added[index(place)])
            put(place, p, rules_.pin.clear(), true);
    return out;
}

} // namespace bastewright::points
