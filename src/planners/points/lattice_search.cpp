#include "planners/points/lattice_search.h"

#include "planners/points/cell.h"
#include "planners/points/lattice_trial.h"
#include "planners/points/relax.h"

#include <array>

namespace bastewright::points {
namespace {

/// The cheapest few of many, no two alike.
class Cheapest {
public:
    /// Lattices whose steps differ by less than `alike` are one choice.
    Cheapest(std::size_t most, double alike)
        : most_{most}
        , alike_{alike} {}

    void add(const RankedLattice& r) {
        if (list_.size() == most_ && r.value >= list_.back().value)
            return;
        const auto near = [&](Spot a, Spot b) { return distanceSquared(a, b) < squared(alike_); };
        const auto known = std::find_if(list_.begin(), list_.end(), [&](const RankedLattice& k) {
            return near(k.lattice.along, r.lattice.along) && near(k.lattice.aside, r.lattice.aside);
        });
        if (known != list_.end()) {
            if (known->value <= r.value)
                return;
            list_.erase(known);
        }
        list_.insert(
            std::upper_bound(list_.begin(), list_.end(), r,
                             [](const auto& a, const auto& b) { return a.value < b.value; }),
            r);
        if (list_.size() > most_)
            list_.pop_back();
    }
    const std::vector<RankedLattice>& list() const { return list_; }

private:
    std::size_t most_;
    double alike_;
    std::vector<RankedLattice> list_;
};

/// A direction of the rows.
struct Way {
    Spot unit;
    bool often; ///< fabric is cut along it
};
constexpr double kCos15 = 0.96592582628906829, kSin15 = 0.25881904510252076;
constexpr std::array<Way, 12> kWays{{{{1, 0}, true},
                                     {{0, 1}, true},
                                     {{kRoot2, kRoot2}, true},
                                     {{-kRoot2, kRoot2}, true},
                                     {{kRoot3, kHalf}, false},
                                     {{kHalf, kRoot3}, false},
                                     {{-kHalf, kRoot3}, false},
                                     {{-kRoot3, kHalf}, false},
                                     {{kCos15, kSin15}, false},
                                     {{kSin15, kCos15}, false},
                                     {{-kSin15, kCos15}, false},
                                     {{-kCos15, kSin15}, false}}};

/// The widest rows of points `step` apart, every other row half a step aside, that cover: in the
/// circle round a triangle (step²/4 + row²) / (2 · row) = radius, as far as it has no obtuse angle.
double widestRows(double step, double radius) {
    const double half = step / 2;
    const double row = radius + std::sqrt(std::max(0.0, squared(radius) - squared(half)));
    return row >= half ? row : std::sqrt(std::max(0.0, 2 * half * radius - squared(half)));
}

/// As much of the top as tells lattices apart.
Field middlePart(const Rules& rules) {
    const Field& t = rules.top();
    const double most = 15 * rules.spacing;
    const double x = std::max(0.0, t.width() - most) / 2, y = std::max(0.0, t.length() - most) / 2;
    return {t.x0 + x, t.y0 + y, t.x1 - x, t.y1 - y};
}

/// Lattices of every direction, stretch and width, the cheapest of them varied on the whole top.
std::vector<RankedLattice> cheapest(const Rules& rules, const PlaceMap& map, bool exact,
                                    std::size_t most, std::stop_token stop) {
    const Field part = middlePart(rules);
    const LatticeTrial sample{rules, map, part, exact}, whole{rules, map, rules.top(), exact};
    const double r = rules.radius, alike = (exact ? 0.007 : 0.02) * r;
    const Spot middle{(part.x0 + part.x1) / 2, (part.y0 + part.y1) / 2};
    Dice dice{1};
    const auto share = [&] { return static_cast<double>(dice.below(1000)) / 1000; };
    Cheapest begun{most + 30, alike};
    for (const Way& way : kWays) {
        if (stop.stop_requested())
            return {};
        const Spot across{-way.unit.y, way.unit.x};
        for (double step = 1.3 * r; step <= 2.2 * r; step += r / (way.often ? 150 : 30)) {
            const double widest = widestRows(step, r - map.pitch() / 4);
            for (const double width : {0.999, 0.98, 0.96, 0.93, 0.9}) {
                const Spot along = step * way.unit;
                const Spot aside = 0.5 * along + width * widest * across;
                for (int i = 0; i < 8; ++i) {
                    const double u = share(), v = share();
                    const Lattice l{middle + u * along + v * aside, along, aside};
                    begun.add({sample.value(l), l});
                }
            }
        }
    }
    Cheapest best{most, alike};
    for (const RankedLattice& b : begun.list()) {
        if (stop.stop_requested())
            break;
        RankedLattice next = sample.shifted(b);
        next.value = whole.value(next.lattice);
        best.add(whole.varied(next));
    }
    return best.list();
}

Spots atNearestPlaces(const Spots& wanted, const Rules& rules, const PlaceMap& map) {
    Spots out;
    Buckets taken{rules.top(), rules.spacing};
    for (const Spot p : wanted) {
        const Spot w = map.inside(p);
        Spot best;
        double least = 1e18;
        map.eachNear(w, std::min(map.reach(), map.away(w) + 2 * map.pitch()), [&](Spot s) {
            const double d = distanceSquared(s, w);
            if (d < least - 1e-9 &&
                !taken.anyNear(s, rules.gap - 1e-7, [](int, Spot) { return true; })) {
                least = d;
                best = s;
            }
        });
        if (least < 1e18) {
            taken.add(0, best);
            out.push_back(best);
        }
    }
    return out;
}

/// Share of a point lost for each point in a patch of the top, once they are relaxed: what is out
/// of reach then will take further points.
double lossIn(const Field& patch, const Spots& wanted, const Rules& rules, const PlaceMap& map) {
    const Field wide = patch.grown(2 * rules.radius);
    Spots near;
    for (const Spot s : wanted)
        if (wide.contains(s))
            near.push_back(s);
    near = atNearestPlaces(near, rules, map);
    relax(near, rules, map, 6, patch);
    Buckets buckets{wide, rules.radius};
    for (std::size_t i = 0; i < near.size(); ++i)
        buckets.add(static_cast<int>(i), near[i]);
    Spots cell, scratch;
    double loss = 0;
    int inside = 0;
    for (std::size_t i = 0; i < near.size(); ++i) {
        if (!patch.contains(near[i]))
            continue;
        cellOf(static_cast<int>(i), near[i], buckets, rules.top(), 2 * rules.radius, cell, scratch);
        ++inside;
        // A hole is shared by the three points round it.
        loss += std::clamp(2 * (std::sqrt(farthestFrom(near[i], cell)) - rules.radius), 0.0, 0.4);
    }
    return inside > 0 ? loss / inside : 0;
}

double promised(const Lattice& lattice, const Rules& rules, const PlaceMap& map) {
    const Field& top = rules.top();
    const Spots wanted = pointsFor(lattice, top);
    // Places apart from each other, in no even pattern of their own.
    constexpr std::array<Spot, 4> kPatches{{{0.2, 0.3}, {0.75, 0.2}, {0.3, 0.8}, {0.7, 0.65}}};
    double loss = 0;
    for (const Spot share : kPatches) {
        const Spot m{top.x0 + share.x * top.width(), top.y0 + share.y * top.length()};
        loss += lossIn(Field{m.x, m.y, m.x, m.y}.grown(2.2 * rules.spacing), wanted, rules, map);
    }
    return static_cast<double>(wanted.size()) * (1 + loss / kPatches.size());
}

} // namespace

Spots laidOn(const Lattice& lattice, const Rules& rules, const PlaceMap& map) {
    Spots out = atNearestPlaces(pointsFor(lattice, rules.top()), rules, map);
    relax(out, rules, map, 8, rules.top());
    return out;
}

std::vector<Lattice> suitableLattices(const Rules& rules, const PlaceMap& map, int effort,
                                      bool glance, std::stop_token stop) {
    const auto times = static_cast<std::size_t>(effort);
    const std::size_t of = glance ? 4 : 1;
    Cheapest promising{10 * times / of, 0};
    for (const RankedLattice& r : cheapest(rules, map, false, 120 * times / of, stop))
        if (!stop.stop_requested())
            promising.add({promised(r.lattice, rules, map), r.lattice});
    std::vector<Lattice> out;
    for (const RankedLattice& r : promising.list())
        out.push_back(r.lattice);
    for (const RankedLattice& r : cheapest(rules, map, true, 14 * times / of, stop))
        out.push_back(r.lattice);
    return out;
}

} // namespace bastewright::points
