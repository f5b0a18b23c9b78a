#include "checker/geometry/uncovered.h"

#include "checker/geometry/spot.h"
#include "checker/tolerances.h"

#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <utility>

namespace bastewright::check {
namespace {

constexpr double kTurn = 2 * std::numbers::pi;

/// Ranges of one coordinate (an angle, a place along a side) that are covered; finds what is left.
class Cover {
public:
    Cover(double lo, double hi)
        : lo_{lo}
        , hi_{hi} {}
    void add(double from, double to) { covered_.emplace_back(from, to); }
    /// Middles of the uncovered ranges longer than `shortest`.
    std::vector<double> gaps(double shortest) {
        std::sort(covered_.begin(), covered_.end());
        std::vector<double> out;
        double reached = lo_;
        for (const auto& [from, to] : covered_) {
            const double end = std::min(from, hi_);
            if (end - reached > shortest)
                out.push_back((reached + end) / 2);
            reached = std::max(reached, to);
        }
        if (hi_ - reached > shortest)
            out.push_back((reached + hi_) / 2);
        return out;
    }

private:
    double lo_, hi_;
    std::vector<std::pair<double, double>> covered_;
};

/// Adds the angles within `half` of `middle`, cut at the ends of a turn.
void addAngles(Cover& cover, double middle, double half) {
    const double from = middle - half, to = middle + half;
    cover.add(from, to);
    cover.add(from + kTurn, to + kTurn);
    cover.add(from - kTurn, to - kTurn);
}

class Discs {
public:
    Discs(const Rect& area, std::span<const Point> centres, Length radius)
        : x0_{area.x0.in()}
        , y0_{area.y0.in()}
        , x1_{area.x1.in()}
        , y1_{area.y1.in()}
        , radius_{radius.in()} {
        std::vector<Point> once(centres.begin(), centres.end());
        std::sort(once.begin(), once.end());
        once.erase(std::unique(once.begin(), once.end()), once.end());
        for (const Point p : once) {
            const Spot s = spot(p);
            cells_[cell(s)].push_back(s);
            spots_.push_back(s);
        }
    }

    /// One place on every bare part of the sides and of the circles.
    std::vector<Spot> bareRim() const {
        std::vector<Spot> out;
        bareSides(out);
        for (const Spot s : spots_)
            bareArcs(s, out);
        return out;
    }

    double nearest(Spot from) const {
        double least = std::numeric_limits<double>::infinity();
        forNear(from,
                [&](Spot s) { least = std::min(least, std::hypot(s.x - from.x, s.y - from.y)); });
        return least;
    }

    /// Climbs from the rim of a hole to where the nearest centre is farthest.
    Spot deepest(Spot from) const {
        double best = nearest(from);
        for (double step = radius_ / 2; step > kShortestArcInches; step /= 2)
            for (int i = 0; i < 8; ++i) {
                const double angle = i * kTurn / 8;
                const Spot to{std::clamp(from.x + step * std::cos(angle), x0_, x1_),
                              std::clamp(from.y + step * std::sin(angle), y0_, y1_)};
                if (const double d = nearest(to); d > best && std::isfinite(d)) {
                    best = d;
                    from = to;
                }
            }
        return from;
    }

private:
    using Cell = std::pair<long, long>;

    Cell cell(Spot s) const {
        return {std::lround(std::floor(s.x / (2 * radius_))),
                std::lround(std::floor(s.y / (2 * radius_)))};
    }

    /// Every centre within two radii, and some beyond.
    template <class F>
    void forNear(Spot s, F&& f) const {
        const auto [cx, cy] = cell(s);
        for (long x = cx - 1; x <= cx + 1; ++x)
            for (long y = cy - 1; y <= cy + 1; ++y)
                if (const auto it = cells_.find({x, y}); it != cells_.end())
                    for (const Spot other : it->second)
                        f(other);
    }

    void bareSides(std::vector<Spot>& out) const {
        const auto side = [&](bool across, double at, double lo, double hi) {
            Cover cover{lo, hi};
            for (const Spot s : spots_) {
                const double off = across ? s.y - at : s.x - at;
                if (std::abs(off) >= radius_)
                    continue;
                const double half = std::sqrt(radius_ * radius_ - off * off);
                const double along = across ? s.x : s.y;
                cover.add(along - half, along + half);
            }
            for (const double gap : cover.gaps(kShortestArcInches))
                out.push_back(across ? Spot{gap, at} : Spot{at, gap});
        };
        side(true, y0_, x0_, x1_);
        side(true, y1_, x0_, x1_);
        side(false, x0_, y0_, y1_);
        side(false, x1_, y0_, y1_);
    }

    void bareArcs(Spot s, std::vector<Spot>& out) const {
        Cover cover{0, kTurn};
        // What lies beyond a side of the area needs no cover.
        const auto beyond = [&](double inside, double towards) {
            if (inside < radius_)
                addAngles(cover, towards, std::acos(std::max(inside / radius_, -1.0)));
        };
        beyond(x1_ - s.x, 0);
        beyond(y1_ - s.y, kTurn / 4);
        beyond(s.x - x0_, kTurn / 2);
        beyond(s.y - y0_, 3 * kTurn / 4);
        forNear(s, [&](Spot other) {
            const double dx = other.x - s.x, dy = other.y - s.y;
            const double apart = std::hypot(dx, dy);
            if (apart > 0 && apart < 2 * radius_)
                addAngles(cover, std::atan2(dy, dx), std::acos(apart / (2 * radius_)));
        });
        for (const double gap : cover.gaps(kShortestArcInches / radius_))
            out.push_back({s.x + radius_ * std::cos(gap), s.y + radius_ * std::sin(gap)});
    }

    double x0_, y0_, x1_, y1_, radius_;
    std::vector<Spot> spots_;
    std::map<Cell, std::vector<Spot>> cells_;
};

} // namespace

std::vector<Uncovered> uncovered(const Rect& area, std::span<const Point> centres, Length radius,
                                 std::size_t limit) {
    std::vector<Uncovered> out;
    if (area.empty() || radius <= Length{})
        return out;
    const Discs discs{area, centres, radius};
    std::vector<Spot> told;
    for (const Spot rim : discs.bareRim()) {
        if (out.size() == limit)
            break;
        const Spot at = discs.deepest(rim);
        const bool known = std::any_of(told.begin(), told.end(), [&](Spot s) {
            return std::hypot(s.x - at.x, s.y - at.y) < radius.in();
        });
        if (known)
            continue;
        told.push_back(at);
        const double near = discs.nearest(at);
        out.push_back({{Length::nearestInches(at.x), Length::nearestInches(at.y)},
                       std::isfinite(near) ? Length::nearestInches(near) : radius});
    }
    return out;
}

} // namespace bastewright::check
