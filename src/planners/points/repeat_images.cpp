#include "planners/points/repeat_images.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bastewright::points {
namespace {

constexpr std::array kFlips{Flip{true, true}, Flip{true, false}, Flip{false, true}};
constexpr double kSame = 1e-6;

bool among(const Spots& points, Spot p) {
    return std::any_of(points.begin(), points.end(), [&](Spot q) {
        return distanceSquared(p, q) < squared(kSame);
    });
}

/// The same places, in whatever order.
bool same(const Spots& a, const Spots& b) {
    const auto key = [](Spot p) { return std::pair{std::lround(p.y / kSame), std::lround(p.x / kSame)}; };
    const auto keys = [&](const Spots& of) {
        std::vector<std::pair<long, long>> out;
        for (const Spot p : of)
            out.push_back(key(p));
        std::sort(out.begin(), out.end());
        return out;
    };
    return a.size() == b.size() && keys(a) == keys(b);
}

/// Into the tile that stands for a periodic kind: its head and left ends belong to it.
double wrapped(double v, const AxisKinds::Kind& kind, double tile) {
    return kind.periodic ? v - tile * std::floor((v - kind.lo) / tile + kSame) : v;
}

} // namespace

RepeatImages::RepeatImages(const Field& top, const RepeatFrame& frame,
                           const std::vector<Spots>& places, double radius)
    : top_{top}
    , frame_{frame}
    , radius_{radius} {
    for (const Flip flip : kFlips) {
        bool all = true;
        for (int place = 0; place < frame_.count() && all; ++place)
            all = holds(flip, place, places);
        if (all)
            flips_.push_back(flip);
    }
}

bool RepeatImages::holds(Flip flip, int place, const std::vector<Spots>& points) const {
    return same(image(place, points[static_cast<std::size_t>(place)], flip),
                points[static_cast<std::size_t>(imageOf(place, flip))]);
}

Spot RepeatImages::flipped(Spot p, Flip flip) const {
    return {flip.x ? top_.x0 + top_.x1 - p.x : p.x, flip.y ? top_.y0 + top_.y1 - p.y : p.y};
}

int RepeatImages::imageOf(int place, Flip flip) const {
    const int across = static_cast<int>(frame_.x.kinds.size());
    const int x = frame_.xKind(place), y = frame_.yKind(place);
    return (flip.y ? frame_.y.last() - y : y) * across + (flip.x ? frame_.x.last() - x : x);
}

bool RepeatImages::apart(int a, int b) const {
    const auto between = [&](const AxisKinds& axis, int kindA, int kindB) {
        const auto& lower = axis.kinds[static_cast<std::size_t>(std::min(kindA, kindB))];
        const auto& upper = axis.kinds[static_cast<std::size_t>(std::max(kindA, kindB))];
        return upper.lo - lower.hi >= 2 * radius_;
    };
    return between(frame_.x, frame_.xKind(a), frame_.xKind(b)) ||
           between(frame_.y, frame_.yKind(a), frame_.yKind(b));
}

std::vector<Flip> RepeatImages::flipsOf(const TilePattern& tile) const {
    const Spot first{frame_.x.first, frame_.y.first};
    const auto inTile = [](double v, double size) {
        return v - size * std::floor(v / size + kSame);
    };
    std::vector<Flip> out;
    for (const Flip flip : flips_)
        if (std::all_of(tile.points.begin(), tile.points.end(), [&](Spot p) {
                const Spot q = flipped(first + p, flip) - first;
                // On a line between tiles it would belong to another tile than its image does.
                return !(flip.x && p.x < kSame) && !(flip.y && p.y < kSame) &&
                       among(tile.points, {inTile(q.x, frame_.x.tile), inTile(q.y, frame_.y.tile)});
            }))
            out.push_back(flip);
    return out;
}

std::optional<RepeatImages::Source> RepeatImages::sourceOf(int place,
                                                           const std::vector<Flip>& flips) const {
    std::optional<Source> best;
    for (const Flip flip : flips)
        if (const int from = imageOf(place, flip);
            from < (best ? best->place : place) && apart(from, place))
            best = Source{from, flip};
    return best;
}

Spots RepeatImages::image(int of, const Spots& points, Flip flip) const {
    const int place = imageOf(of, flip);
    const auto& kindX = frame_.x.kinds[static_cast<std::size_t>(frame_.xKind(place))];
    const auto& kindY = frame_.y.kinds[static_cast<std::size_t>(frame_.yKind(place))];
    Spots out;
    for (const Spot p : points) {
        const Spot q = flipped(p, flip);
        out.push_back({wrapped(q.x, kindX, frame_.x.tile), wrapped(q.y, kindY, frame_.y.tile)});
    }
    return out;
}

} // namespace bastewright::points
