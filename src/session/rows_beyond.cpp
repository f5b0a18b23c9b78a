#include "session/private/rows_beyond.h"

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

/// Places are tried so far apart.
constexpr double kStep = 0.125;
/// Every place is within r = s/√2 of a point and 1/8 in more at most (docs/computation/points.md);
/// from a place to the nearest that is tried it is half the diagonal of a step.
double radiusOf(const Job& job) {
    return job.basting.spacing.in() / std::sqrt(2.0) + 0.125 - kStep / std::sqrt(2.0);
}

double distance(const Rect& r, Point p) {
    const double dx = std::max({r.x0.in() - p.x.in(), 0.0, p.x.in() - r.x1.in()});
    const double dy = std::max({r.y0.in() - p.y.in(), 0.0, p.y.in() - r.y1.in()});
    return std::hypot(dx, dy);
}

class Basted {
public:
    explicit Basted(std::span<const Pass> passes) {
        for (const Pass& p : passes)
            areas_.insert(areas_.end(), p.fresh.parts.begin(), p.fresh.parts.end());
    }
    double distanceTo(Point p) const {
        double least = 1e9;
        for (const Rect& r : areas_)
            least = std::min(least, distance(r, p));
        return least;
    }
    const std::vector<Rect>& areas() const { return areas_; }

private:
    std::vector<Rect> areas_;
};

struct Covering {
    PlacedPoint point;
    double radius;
    bool isBasted = false, stays = false;
};

/// How many points cover each of the places along the basted area.
class Places {
public:
    Places(const Rect& top, const Basted& basted, double within)
        : x0_{top.x0.in()}
        , y0_{top.y0.in()}
        , columns_{static_cast<int>(std::ceil(top.width().in() / kStep)) + 1}
        , rows_{static_cast<int>(std::ceil(top.length().in() / kStep)) + 1}
        , covers_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), kOutside) {
        for (const Rect& r : basted.areas())
            each({r.x0.in() - within, r.y0.in() - within, r.x1.in() + within, r.y1.in() + within},
                 [&](double x, double y, std::int16_t& n) {
                     if (basted.distanceTo({Length::nearestInches(x), Length::nearestInches(y)}) <=
                         within)
                         n = 0;
                 });
    }

    void add(const Covering& c, std::int16_t by) {
        near(c, [by](std::int16_t& n) { n = static_cast<std::int16_t>(n + by); });
    }
    bool needs(const Covering& c) {
        bool alone = false;
        near(c, [&alone](std::int16_t& n) { alone = alone || n == 1; });
        return alone;
    }
    /// Places that lie within the last bit the rule allows.
    std::vector<Point> uncovered() const {
        std::vector<Point> out;
        for (std::size_t i = 0; i < covers_.size(); ++i)
            if (covers_[i] == 0) {
                const auto row = static_cast<int>(i) / columns_,
                           column = static_cast<int>(i) % columns_;
                out.push_back({Length::nearestInches(x0_ + column * kStep),
                               Length::nearestInches(y0_ + row * kStep)});
            }
        return out;
    }

private:
    static constexpr std::int16_t kOutside = -1;
    struct Box {
        double x0, y0, x1, y1;
    };

    template <class Do>
    void each(const Box& b, Do what) {
        const auto index = [](double at, double from, int most) {
            return std::clamp(static_cast<int>(std::floor((at - from) / kStep)), 0, most - 1);
        };
        for (int r = index(b.y0, y0_, rows_); r <= index(b.y1, y0_, rows_); ++r)
            for (int c = index(b.x0, x0_, columns_); c <= index(b.x1, x0_, columns_); ++c)
                what(x0_ + c * kStep, y0_ + r * kStep,
                     covers_[static_cast<std::size_t>(r) * static_cast<std::size_t>(columns_) +
                             static_cast<std::size_t>(c)]);
    }
    template <class Do>
    void near(const Covering& c, Do what) {
        const double x = c.point.at.x.in(), y = c.point.at.y.in(), r = c.radius;
        each({x - r, y - r, x + r, y + r}, [&](double px, double py, std::int16_t& n) {
            if (n != kOutside && std::hypot(px - x, py - y) <= r)
                what(n);
        });
    }

    double x0_, y0_;
    int columns_, rows_;
    std::vector<std::int16_t> covers_;
};

} // namespace

std::vector<PlacedPoint> rowsBeyond(const Job& before, const Job& after,
                                    std::span<const PlacedPoint> old,
                                    std::span<const PlacedPoint> fresh,
                                    std::span<const Pass> basted) {
    const Basted done{basted};
    const double r = radiusOf(before), wide = radiusOf(after);
    std::vector<Covering> along;
    std::vector<PlacedPoint> out;
    for (const PlacedPoint& p : old) {
        const double away = done.distanceTo(p.at);
        // Beyond that a place is covered by new rows alone, which all lie beyond the basted area.
        if (away <= wide + r)
            along.push_back({p, r, away <= 0});
    }
    for (const PlacedPoint& p : fresh)
        if (const double away = done.distanceTo(p.at); away > 2 * wide + r)
            out.push_back(p);
        else if (away > 0)
            along.push_back({p, wide});

    const Rect top = topRect(after.top);
    Places places{top, done, wide + wide + r};
    for (const Covering& c : along)
        places.add(c, 1);
    // Of those farther away, which stay, what they cover along it.
    for (const PlacedPoint& p : out)
        places.add({p, wide}, 1);
    for (const Point& place : places.uncovered()) {
        const auto nearest = std::ranges::min_element(along, {}, [&](const Covering& c) {
            return std::hypot((c.point.at.x - place.x).in(), (c.point.at.y - place.y).in());
        });
        if (nearest != along.end())
            nearest->stays = true;
    }
    // Old ones first, from the farthest in: they stand nearer together.
    std::ranges::stable_sort(along, std::greater<>{}, [&](const Covering& c) {
        return std::pair{c.radius < wide, done.distanceTo(c.point.at)};
    });
    for (const Covering& c : along) {
        if (c.isBasted)
            continue;
        if (c.stays || places.needs(c))
            out.push_back(c.point);
        else
            places.add(c, -1);
    }
    std::ranges::sort(out, {}, [](const PlacedPoint& p) { return std::pair{p.at.y, p.at.x}; });
    return out;
}

} // namespace bastewright
