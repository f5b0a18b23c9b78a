#include "planners/passes/zones.h"

#include "plan/trade_times.h"
#include "planners/passes/reach.h"

#include <cmath>
#include <optional>
#include <set>

namespace bastewright {
namespace {

/// Down to a place that a person can measure, an eighth of an inch.
Length eighths(Length l) {
    const Length eighth = Length::inch64ths(8);
    return eighth * (l.nm() / eighth.nm());
}

/// The grid's lines along one axis: every boundary, and between them near-equal parts at most
/// `longest`, each moved to a seam where one lies within a fifth of the part.
std::vector<Length> gridLines(const std::set<Length>& boundaries, Length longest,
                              const std::vector<Length>& seams) {
    std::vector<Length> out;
    for (const Length end : boundaries) {
        if (!out.empty()) {
            const Length start = out.back();
            const auto parts = std::max<std::int64_t>(1, ceilDiv(end - start, longest));
            const Length part = (end - start) / parts;
            for (std::int64_t i = 1; i < parts; ++i) {
                const Length even = start + (end - start) * i / parts;
                Length at = eighths(even);
                Length off = part / 5;
                for (const Length s : seams)
                    if (abs(s - even) <= off && s > out.back() && s - out.back() <= longest) {
                        at = s;
                        off = abs(s - even);
                    }
                if (at > out.back() && at < end)
                    out.push_back(at);
            }
        }
        out.push_back(end);
    }
    return out;
}

/// Index of the cell of `lines` that holds `at` (half open, the last one closed).
std::size_t cellOf(const std::vector<Length>& lines, Length at) {
    const auto above = std::ranges::upper_bound(lines, at);
    const auto i = static_cast<std::size_t>(above - lines.begin());
    return std::clamp<std::size_t>(i, 1, lines.size() - 1) - 1;
}

class Grid {
public:
    Grid(const ZoneInput& in, std::vector<Length> xs, std::vector<Length> ys)
        : in_{in}
        , xs_{std::move(xs)}
        , ys_{std::move(ys)} {
        for (std::size_t row = 0; row + 1 < ys_.size(); ++row)
            for (std::size_t column = 0; column + 1 < xs_.size(); ++column) {
                const Rect area{xs_[column], ys_[row], xs_[column + 1], ys_[row + 1]};
                zones_.push_back(
                    {columnLetters(column) + std::to_string(row + 1), passAt(area), area, {}});
            }
    }

    void give(std::span<const PlacedPoint> points) {
        for (const PlacedPoint& p : points)
            zones_[homeOf(p.at)].points.push_back(p);
    }

    std::vector<Zone> take() { return std::move(zones_); }
    const std::vector<Zone>& zones() const { return zones_; }

private:
    const ZoneInput& in_;
    std::vector<Length> xs_, ys_;
    std::vector<Zone> zones_;

    int passAt(const Rect& area) const {
        for (const Pass& p : in_.passes)
            if (contains(p.fresh, area))
                return p.number;
        return 0;
    }

    std::size_t homeOf(Point at) const {
        return cellOf(ys_, at.y) * (xs_.size() - 1) + cellOf(xs_, at.x);
    }
};

/// The sides from which someone with the reach can work the zone.
std::vector<SideRange> sidesOf(const ZoneInput& in, const Zone& zone, const Rect& table) {
    return sidesFor(workBox(zone), table, in.closed, in.reach, !in.floor);
}

bool reachable(const ZoneInput& in, const Zone& zone) {
    if (zone.points.empty())
        return true; // nobody has work there
    const auto pass = std::ranges::find(in.passes, zone.pass, &Pass::number);
    return !sidesOf(in, zone, pass->table).empty();
}

/// How many can stand side by side to work a pass's zones.
std::size_t room(const ZoneInput& in, const Pass& pass, const std::vector<Zone>& zones) {
    PerSide<std::optional<Interval>> stretches; // along each side, what can be worked from it
    for (const Zone& z : zones) {
        if (z.pass != pass.number)
            continue;
        for (const SideRange& r : sidesOf(in, z, pass.table)) {
            const Interval along = isAcross(r.side) ? z.area.x() : z.area.y();
            auto& stretch = stretches[r.side];
            stretch =
                stretch ? Interval{std::min(stretch->lo, along.lo), std::max(stretch->hi, along.hi)}
                        : along;
        }
    }
    std::size_t places = 0;
    for (const Side s : kSides)
        if (stretches[s])
            places += std::max<std::size_t>(
                1, static_cast<std::size_t>(ratio(stretches[s]->size(), kElbowRoom)));
    return std::clamp<std::size_t>(places, 1, std::max<std::size_t>(in.people, 1));
}

/// How long the people take over all zones, pass by pass: longest zone first to whoever is free
/// (Graham's LPT rule), stepping up to a zone to place its pins and once more to close them.
double workSeconds(const ZoneInput& in, const std::vector<Zone>& zones) {
    using namespace trade_times;
    double sum = 0;
    for (const Pass& pass : in.passes) {
        std::vector<double> work;
        for (const Zone& z : zones)
            if (z.pass == pass.number && !z.points.empty())
                work.push_back(2 * kSettle + (kPlacePin + kClosePin) * double(z.points.size()));
        std::ranges::sort(work, std::greater<>{});
        std::vector<double> busy(room(in, pass, zones), 0);
        for (const double w : work)
            *std::ranges::min_element(busy) += w;
        sum += *std::ranges::max_element(busy);
    }
    return sum;
}

} // namespace

std::string columnLetters(std::size_t column) {
    std::string out;
    for (std::size_t n = column + 1; n > 0; n = (n - 1) / 26)
        out.insert(out.begin(), static_cast<char>('A' + (n - 1) % 26));
    return out;
}

std::vector<Zone> cutZones(const ZoneInput& in, std::span<const PlacedPoint> points) {
    std::set<Length> x{{}, in.top.width}, y{{}, in.top.length};
    for (const Pass& p : in.passes) {
        for (const Rect& part : p.fresh.parts) {
            x.insert({part.x0, part.x1});
            y.insert({part.y0, part.y1});
        }
    }
    // From zones as wide as a reach down to half of it; finer still only where some would be out of
    // reach.
    std::vector<Zone> best;
    std::optional<double> soonest;
    for (const int tenths : {10, 8, 7, 6, 5, 4, 3, 2}) {
        const Length longest = std::max(in.reach * tenths / 10, Length::inches(6));
        Grid grid{in, gridLines(x, longest, in.seamsX), gridLines(y, longest, in.seamsY)};
        grid.give(points);
        if (tenths < 5 && soonest)
            break;
        if (!std::ranges::all_of(grid.zones(), [&](const Zone& z) { return reachable(in, z); })) {
            if (!soonest)
                best = grid.take(); // for the crew planner to report, unless a finer grid cures it
            continue;
        }
        const double seconds = workSeconds(in, grid.zones());
        if (!soonest || seconds < *soonest) {
            soonest = seconds;
            best = grid.take();
        }
    }
    return best;
}

} // namespace bastewright
