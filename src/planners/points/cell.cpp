#include "planners/points/cell.h"

namespace bastewright::points {
namespace {

/// Cuts from a convex polygon what is nearer to `other` than to `own`.
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

} // namespace

void cellOf(int id, Spot own, const Buckets& near, const Field& top, double reach, Spots& cell,
            Spots& scratch) {
    for (;; reach *= 2) {
        // A square that holds whatever may be nearest while no more than `reach` counts.
        const Field f{std::max(top.x0, own.x - reach), std::max(top.y0, own.y - reach),
                      std::min(top.x1, own.x + reach), std::min(top.y1, own.y + reach)};
        cell = {{f.x0, f.y0}, {f.x1, f.y0}, {f.x1, f.y1}, {f.x0, f.y1}};
        near.eachNear(own, reach, [&](int k, Spot q) {
            if (k != id && !cell.empty())
                keepNearer(cell, own, q, scratch);
        });
        if (2 * std::sqrt(farthestFrom(own, cell)) <= reach ||
            reach > 2 * (top.width() + top.length()))
            return;
    }
}

double farthestFrom(Spot at, const Spots& places) {
    double far = 0;
    for (const Spot v : places)
        far = std::max(far, distanceSquared(v, at));
    return far;
}

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

} // namespace bastewright::points
