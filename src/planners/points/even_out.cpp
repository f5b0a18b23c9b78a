#include "planners/points/even_out.h"

#include "planners/points/buckets.h"
#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

/// The part of a convex polygon nearer to `own` than to `other`.
void keepNearer(Spots& polygon, Spot own, Spot other, Spots& scratch) {
    const Spot n = other - own;
    const double limit = (n.x * (own.x + other.x) + n.y * (own.y + other.y)) / 2;
    const auto side = [&](Spot p) { return n.x * p.x + n.y * p.y - limit; };
    scratch.clear();
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Spot a = polygon[i], b = polygon[(i + 1) % polygon.size()];
        const double sa = side(a), sb = side(b);
        if (sa <= 0)
            scratch.push_back(a);
        if ((sa < 0 && sb > 0) || (sa > 0 && sb < 0)) {
            const double t = sa / (sa - sb);
            scratch.push_back({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)});
        }
    }
    polygon.swap(scratch);
}

class Evener {
public:
    explicit Evener(const Rules& rules)
        : rules_{rules}
        , room_{rules.top().grown(-rules.pin.edge())} {
        room_.x0 += rules.pin.halfLength();
        room_.x1 -= rules.pin.halfLength();
    }

    bool usable() const { return room_.x0 < room_.x1 && room_.y0 < room_.y1; }
    const Field& room() const { return room_; }

    /// One step for the points that may move; true where every place of their cells is in reach.
    bool step(Spots& points, const std::vector<std::size_t>& moving, double slack) {
        Buckets near{rules_.top(), rules_.spacing};
        for (std::size_t i = 0; i < points.size(); ++i)
            near.add(static_cast<int>(i), points[i]);
        bool reached = true;
        const Spots before = points;
        for (const std::size_t i : moving) {
            const Field& t = rules_.top();
            Spots cell{{t.x0, t.y0}, {t.x1, t.y0}, {t.x1, t.y1}, {t.x0, t.y1}};
            for (double reach = 4 * rules_.radius;; reach *= 2) {
                near.eachNear(before[i], reach, [&](int k, Spot q) {
                    if (k != static_cast<int>(i) && !cell.empty())
                        keepNearer(cell, before[i], q, scratch_);
                });
                double far = 0;
                for (const Spot v : cell)
                    far = std::max(far, distanceSquared(v, before[i]));
                if (2 * std::sqrt(far) <= reach || reach > 2 * (t.width() + t.length()))
                    break;
            }
            if (cell.empty())
                continue;
            const Spot middle = middleOfSmallestCircle(cell);
            points[i] = {std::clamp(middle.x, room_.x0, room_.x1),
                         std::clamp(middle.y, room_.y0, room_.y1)};
            for (const Spot v : cell)
                reached &= distanceSquared(v, points[i]) <= squared(rules_.radius - slack);
        }
        return reached;
    }

    /// True where the points, rounded, keep every rule.
    bool rounded(Spots& points) const {
        for (Spot& p : points) {
            p = {rules_.anchor.x + std::round((p.x - rules_.anchor.x) / rules_.fine) * rules_.fine,
                 rules_.anchor.y + std::round((p.y - rules_.anchor.y) / rules_.fine) * rules_.fine};
            if (!rules_.pin.angleAt(p))
                return false;
        }
        Buckets near{rules_.top(), rules_.spacing};
        for (const Spot p : points) {
            if (near.anyNear(p, rules_.gap - 1e-7, [](int, Spot) { return true; }))
                return false;
            near.add(0, p);
        }
        return holes(points, rules_.top(), rules_.radius).empty();
    }

private:
    const Rules& rules_;
    Field room_;
    Spots scratch_;
};

Layout loose(const Spots& points) {
    Layout out;
    for (const Spot p : points)
        out.pins.push_back({p, true});
    return out;
}

} // namespace

Spot middleOfSmallestCircle(const Spots& places) {
    struct Circle {
        Spot middle;
        double r2;
        bool holds(Spot p) const { return distanceSquared(p, middle) <= r2 * (1 + 1e-12) + 1e-14; }
    };
    const auto onTwo = [](Spot a, Spot b) {
        const Spot m{(a.x + b.x) / 2, (a.y + b.y) / 2};
        return Circle{m, distanceSquared(m, a)};
    };
    const auto onThree = [&](Spot a, Spot b, Spot c) {
        const Spot u = b - a, v = c - a;
        const double d = 2 * (u.x * v.y - u.y * v.x);
        if (std::abs(d) < 1e-14) {
            const Circle all[] = {onTwo(a, b), onTwo(b, c), onTwo(a, c)};
            return *std::max_element(std::begin(all), std::end(all),
                                     [](const Circle& x, const Circle& y) { return x.r2 < y.r2; });
        }
        const double uu = u.x * u.x + u.y * u.y, vv = v.x * v.x + v.y * v.y;
        const Spot m{a.x + (v.y * uu - u.y * vv) / d, a.y + (u.x * vv - v.x * uu) / d};
        return Circle{m, distanceSquared(m, a)};
    };
    Circle c{places.front(), 0};
    for (std::size_t i = 1; i < places.size(); ++i) {
        if (c.holds(places[i]))
            continue;
        c = {places[i], 0};
        for (std::size_t j = 0; j < i; ++j) {
            if (c.holds(places[j]))
                continue;
            c = onTwo(places[i], places[j]);
            for (std::size_t k = 0; k < j; ++k)
                if (!c.holds(places[k]))
                    c = onThree(places[i], places[j], places[k]);
        }
    }
    return c.middle;
}

Layout evenedOut(const Rules& rules, Layout start, int effort, std::stop_token stop) {
    Evener evener{rules};
    if (!evener.usable() || effort <= 0)
        return start;
    Spots best = start.spots();
    const double slack = rules.fine * 0.75;
    Dice dice{1};
    const auto settled = [&](Spots points, const std::vector<std::size_t>& moving,
                             int steps) -> std::optional<Spots> {
        for (int i = 0; i < steps && !stop.stop_requested(); ++i)
            if (evener.step(points, moving, slack)) {
                if (evener.rounded(points))
                    return points;
                return {};
            }
        return {};
    };
    // Scattered beginnings with one point fewer, where few points make that quick.
    constexpr std::size_t kFew = 40;
    for (bool fewer = best.size() > 1 && best.size() <= kFew; fewer && !stop.stop_requested();) {
        fewer = false;
        for (int attempt = 0; attempt < 200 * effort && !fewer; ++attempt) {
            Spots points(best.size() - 1);
            std::vector<std::size_t> all(points.size());
            for (std::size_t i = 0; i < points.size(); ++i) {
                const auto at = [&](double lo, double hi) {
                    return lo + (hi - lo) * static_cast<double>(dice.below(100'000)) / 100'000;
                };
                points[i] = {at(evener.room().x0, evener.room().x1),
                             at(evener.room().y0, evener.room().y1)};
                all[i] = i;
            }
            if (auto better = settled(points, all, 250)) {
                best = std::move(*better);
                fewer = best.size() > 1;
            }
            if (stop.stop_requested())
                break;
        }
    }
    // One away, and those around it evened out.
    for (std::size_t i = 0; i < best.size() && best.size() > kFew && !stop.stop_requested();) {
        Spots points = best;
        const Spot gone = points[i];
        points.erase(points.begin() + static_cast<std::ptrdiff_t>(i));
        std::vector<std::size_t> moving;
        for (std::size_t k = 0; k < points.size(); ++k)
            if (distanceSquared(points[k], gone) < squared(3.5 * rules.spacing))
                moving.push_back(k);
        if (auto better = settled(points, moving, 40))
            best = std::move(*better);
        else
            ++i;
    }
    return best.size() < start.pins.size() ? loose(best) : start;
}

} // namespace bastewright::points
