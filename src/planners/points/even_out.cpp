#include "planners/points/even_out.h"

#include "planners/points/cell.h"
#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

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

    /// One step for all points; true where every place of their cells is in reach.
    bool step(Spots& points, double slack) {
        Buckets near{rules_.top(), rules_.spacing};
        for (std::size_t i = 0; i < points.size(); ++i)
            near.add(static_cast<int>(i), points[i]);
        bool reached = true;
        const Spots before = points;
        for (std::size_t i = 0; i < points.size(); ++i) {
            cellOf(static_cast<int>(i), before[i], near, rules_.top(), 4 * rules_.radius, cell_,
                   scratch_);
            if (cell_.empty())
                continue;
            const Spot middle = middleOfSmallestCircle(cell_);
            points[i] = {std::clamp(middle.x, room_.x0, room_.x1),
                         std::clamp(middle.y, room_.y0, room_.y1)};
            for (const Spot v : cell_)
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
        return covered(points, rules_.top(), rules_.radius);
    }

private:
    const Rules& rules_;
    Field room_;
    Spots cell_, scratch_;
};

Layout loose(const Spots& points) {
    Layout out;
    for (const Spot p : points)
        out.pins.push_back({p, true});
    return out;
}

} // namespace

Layout evenedOut(const Rules& rules, Layout start, int effort, std::stop_token stop) {
    Evener evener{rules};
    if (!evener.usable() || effort <= 0)
        return start;
    Spots best = start.spots();
    const double slack = rules.fine * 0.75;
    Dice dice{1};
    const auto evened = [&](Spots points) -> std::optional<Spots> {
        for (int i = 0; i < 250 && !stop.stop_requested(); ++i)
            if (evener.step(points, slack)) {
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
            for (Spot& p : points) {
                const auto at = [&](double lo, double hi) {
                    return lo + (hi - lo) * static_cast<double>(dice.below(100'000)) / 100'000;
                };
                p = {at(evener.room().x0, evener.room().x1),
                     at(evener.room().y0, evener.room().y1)};
            }
            if (auto better = evened(std::move(points))) {
                best = std::move(*better);
                fewer = best.size() > 1;
            }
            if (stop.stop_requested())
                break;
        }
    }
    return best.size() < start.pins.size() ? loose(best) : start;
}

} // namespace bastewright::points
