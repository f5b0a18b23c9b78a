#include "property/points/points_oracle.h"

#include <queue>

#include <cmath>
#include <numbers>

namespace bastewright {
namespace {

struct Place {
    double x, y;
};

double apart(Place a, Place b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

double toNearest(Place p, const std::vector<Place>& points) {
    double least = 1e18;
    for (const Place q : points)
        least = std::min(least, (p.x - q.x) * (p.x - q.x) + (p.y - q.y) * (p.y - q.y));
    return std::sqrt(least);
}

/// Branch and bound over squares: inside one, no place is farther from its nearest point than the
/// middle is by more than half a diagonal.
double farthestPlace(double width, double length, const std::vector<Place>& points) {
    struct Square {
        double most, x, y, halfX, halfY;
        bool operator<(const Square& o) const { return most < o.most; }
    };
    double found = 0;
    std::priority_queue<Square> open;
    const auto look = [&](double x, double y, double hx, double hy) {
        const double here = toNearest({x, y}, points);
        found = std::max(found, here);
        if (here + std::hypot(hx, hy) > found + 1e-3)
            open.push({here + std::hypot(hx, hy), x, y, hx, hy});
    };
    // Corners first: they are often the farthest.
    for (const double x : {0.0, width})
        for (const double y : {0.0, length})
            found = std::max(found, toNearest({x, y}, points));
    look(width / 2, length / 2, width / 2, length / 2);
    while (!open.empty()) {
        const Square s = open.top();
        open.pop();
        if (s.most <= found + 1e-3)
            break;
        const bool across = s.halfX >= s.halfY;
        for (const int side : {-1, 1})
            if (across)
                look(s.x + side * s.halfX / 2, s.y, s.halfX / 2, s.halfY);
            else
                look(s.x, s.y + side * s.halfY / 2, s.halfX, s.halfY / 2);
    }
    return found;
}

double toSegment(Place p, Place a, Place b) {
    const double dx = b.x - a.x, dy = b.y - a.y, d2 = dx * dx + dy * dy;
    double t = d2 > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / d2 : 0;
    t = t < 0 ? 0 : t > 1 ? 1 : t;
    return apart(p, {a.x + t * dx, a.y + t * dy});
}

double between(Place a, Place b, Place c, Place d) {
    const auto side = [](Place p, Place q, Place r) {
        return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
    };
    if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0)
        return 0;
    return std::min(
        {toSegment(a, c, d), toSegment(b, c, d), toSegment(c, a, b), toSegment(d, a, b)});
}

} // namespace

std::vector<Segment> seamsToKeepClearOf(const Job& job) {
    const bool count = job.basting.with == Basting::With::pins && seamsAreSewn(job);
    return count ? seamsOf(job.top) : std::vector<Segment>{};
}

namespace {

struct Ends {
    Place a, b;
};

Ends endsOf(const Job& job, const PlacedPoint& p) {
    // A stitch: 1 1/2 in, or three eighths of a narrower spacing (common practice).
    const double half = job.basting.with == Basting::With::pins ? job.basting.pinLength.in() / 2
                        : job.basting.with == Basting::With::thread
                            ? std::min(0.75, job.basting.spacing.in() * 3 / 16)
                            : 0.0;
    const double turn = p.angle * std::numbers::pi / 180;
    const Place m{p.at.x.in(), p.at.y.in()};
    return {{m.x - half * std::cos(turn), m.y - half * std::sin(turn)},
            {m.x + half * std::cos(turn), m.y + half * std::sin(turn)}};
}

} // namespace

double roomOf(const Job& job, const std::vector<Segment>& seams, const PlacedPoint& point) {
    const Ends e = endsOf(job, point);
    double least = 1e9;
    for (const Segment& s : seams)
        least = std::min(
            least, between(e.a, e.b, {s.from.x.in(), s.from.y.in()}, {s.to.x.in(), s.to.y.in()}));
    return least;
}

double edgeRoomOf(const Job& job, const PlacedPoint& point) {
    const Rect top = topRect(job.top);
    const double w = top.width().in(), h = top.length().in();
    const Ends ends = endsOf(job, point);
    double least = 1e9;
    for (const Place e : {ends.a, ends.b})
        least = std::min({least, e.x, w - e.x, e.y, h - e.y});
    return least;
}

Measured measured(const Job& job, const std::vector<Segment>& seams,
                  const std::vector<PlacedPoint>& points) {
    const Rect top = topRect(job.top);
    const double w = top.width().in(), h = top.length().in();
    std::vector<Place> middles;
    Measured out{0, 1e9, 1e9, 1e9};
    for (const PlacedPoint& p : points) {
        const Place m{p.at.x.in(), p.at.y.in()};
        out.edge = std::min(out.edge, edgeRoomOf(job, p));
        out.room = std::min(out.room, roomOf(job, seams, p));
        for (const Place o : middles)
            out.closest = std::min(out.closest, apart(o, m));
        middles.push_back(m);
    }
    out.farthest = points.empty() ? std::hypot(w, h) : farthestPlace(w, h, middles);
    return out;
}

} // namespace bastewright
