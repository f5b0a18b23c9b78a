#include "planners/points/holes.h"

#include "planners/points/buckets.h"

#include <cmath>
#include <limits>

namespace bastewright::points {
namespace {

class Arrangement {
public:
    Arrangement(std::span<const Spot> points, const Field& field, double radius)
        : points_{points}
        , field_{field}
        , radius_{radius}
        , buckets_{field.grown(radius), std::max(radius, std::sqrt(field.area() / 4e6))} {
        for (std::size_t i = 0; i < points.size(); ++i)
            buckets_.add(static_cast<int>(i), points[i]);
    }

    /// The first of them only where that is all that is asked.
    Spots uncovered(std::size_t most) {
        most_ = most;
        for (const double x : {field_.x0, field_.x1})
            for (const double y : {field_.y0, field_.y1})
                if (!buckets_.anyNear({x, y}, radius_ - kCoverSlack,
                                      [](int, Spot) { return true; }))
                    found_.push_back({x, y});
        for (std::size_t i = 0; i < points_.size() && found_.size() < most_; ++i)
            if (field_.contains(points_[i], radius_))
                roundOne(i);
        return std::move(found_);
    }

private:
    void roundOne(std::size_t i) {
        const Spot p = points_[i];
        near_.clear();
        buckets_.eachNear(p, 2 * radius_, [&](int id, Spot at) {
            if (id != static_cast<int>(i))
                near_.push_back({at, id});
        });
        for (const auto& [q, id] : near_)
            if (id > static_cast<int>(i))
                circles(p, q, id);
        for (const double x : {field_.x0, field_.x1})
            if (const double h2 = squared(radius_) - squared(x - p.x); h2 >= 0)
                for (const double h : {std::sqrt(h2), -std::sqrt(h2)})
                    corner({x, p.y + h}, -1);
        for (const double y : {field_.y0, field_.y1})
            if (const double h2 = squared(radius_) - squared(y - p.y); h2 >= 0)
                for (const double h : {std::sqrt(h2), -std::sqrt(h2)})
                    corner({p.x + h, y}, -1);
    }

    void circles(Spot p, Spot q, int id) {
        const Spot d = q - p;
        const double d2 = distanceSquared(p, q);
        if (d2 <= 0)
            return;
        const double h = std::sqrt(std::max(0.0, squared(radius_) / d2 - 0.25));
        const Spot middle{(p.x + q.x) / 2, (p.y + q.y) / 2};
        corner({middle.x - d.y * h, middle.y + d.x * h}, id);
        corner({middle.x + d.y * h, middle.y - d.x * h}, id);
    }

    void corner(Spot v, int other) {
        if (!field_.contains(v, 1e-9))
            return;
        const double r2 = squared(radius_ - kCoverSlack);
        for (const auto& [q, id] : near_)
            if (id != other && distanceSquared(q, v) <= r2)
                return;
        found_.push_back(v);
    }

    std::span<const Spot> points_;
    Field field_;
    double radius_;
    std::size_t most_ = 0;
    Buckets buckets_;
    std::vector<std::pair<Spot, int>> near_;
    Spots found_;
};

} // namespace

Spots holes(std::span<const Spot> points, const Field& field, double radius) {
    return Arrangement{points, field, radius}.uncovered(std::numeric_limits<std::size_t>::max());
}

bool covered(std::span<const Spot> points, const Field& field, double radius) {
    return Arrangement{points, field, radius}.uncovered(1).empty();
}

double coveringRadius(std::span<const Spot> points, const Field& field) {
    if (points.empty())
        return std::hypot(field.width(), field.length());
    double lo = 0, hi = std::hypot(field.width(), field.length()) + 1;
    for (const Spot p : points)
        hi = std::max(hi, std::hypot(p.x - field.x0, p.y - field.y0));
    // A first guess near the answer keeps the neighbourhoods small.
    double guess = std::sqrt(field.area() / static_cast<double>(points.size()));
    while (guess < hi && !covered(points, field, guess))
        lo = guess, guess *= 1.5;
    hi = std::min(hi, guess);
    while (hi - lo > 1e-5) {
        const double middle = (lo + hi) / 2;
        (covered(points, field, middle) ? hi : lo) = middle;
    }
    return hi;
}

} // namespace bastewright::points
