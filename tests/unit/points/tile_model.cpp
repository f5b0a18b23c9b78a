#include "unit/points/tile_model.h"

#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright {

using namespace points;

TileModel::TileModel(const Rules& rules, const BlockFrame& f)
    : rules_{rules}
    , f_{f} {
    const Spot corner{f.first.x + f.pitchX, f.first.y + f.pitchY};
    const auto key = [](Spot s) {
        return std::pair{std::lround(s.x * 64), std::lround(s.y * 64)};
    };
    std::map<std::pair<long, long>, bool> seen;
    for (double y = 0; y < f.pitchY - 1e-7; y += rules.step)
        for (double x = 0; x < f.pitchX - 1e-7; x += rules.step) {
            const Spot p{x, y};
            const Spot q{wrap(f.blockX - x, f.pitchX), wrap(f.blockY - y, f.pitchY)};
            if (seen[key(p)] || !rules.pin.angleAt(corner + p) ||
                !rules.pin.angleAt(corner + q))
                continue;
            seen[key(p)] = seen[key(q)] = true;
            if (key(p) == key(q))
                orbits_.push_back({p});
            else if (apart2(p, q) >= squared(rules.gap - 1e-7))
                orbits_.push_back({p, q});
        }
    for (const Spots& o : orbits_)
        model_.costs.push_back(static_cast<int>(o.size()));
    for (std::size_t a = 0; a < orbits_.size(); ++a)
        for (std::size_t b = a + 1; b < orbits_.size(); ++b)
            if (tooNear(orbits_[a], orbits_[b]))
                model_.apart.emplace_back(static_cast<int>(a), static_cast<int>(b));
    for (double y = 0; y < f.pitchY; y += 0.75)
        for (double x = 0; x < f.pitchX; x += 0.75)
            require({x, y});
}

std::optional<Solved> TileModel::bound(double wanted, int limitSeconds) {
    double seconds = 0;
    for (int round = 0; round < 12; ++round) {
        auto best = solved(model_, limitSeconds);
        if (!best || !best->proven)
            return {};
        seconds += best->seconds;
        if (seconds > limitSeconds)
            return {};
        Spots all;
        for (const int c : best->chosen)
            for (const Spot p : orbits_[static_cast<std::size_t>(c)])
                for (int j = -1; j <= 1; ++j)
                    for (int i = -1; i <= 1; ++i)
                        all.push_back({p.x + i * f_.pitchX, p.y + j * f_.pitchY});
        const Spots open = holes(all, {0, 0, f_.pitchX, f_.pitchY}, rules_.radius);
        if (open.empty() || best->cost >= wanted - 1e-6) {
            best->seconds = seconds;
            return best;
        }
        for (const Spot w : open)
            require(w);
    }
    return {};
}

CoverTask TileModel::task() const {
    CoverTask out;
    out.fields = {{0, 0, f_.pitchX, f_.pitchY}};
    out.radius = rules_.radius;
    out.gap = rules_.gap;
    for (const Spots& orbit : orbits_) {
        Spots all;
        for (const Spot p : orbit)
            for (int j = -1; j <= 1; ++j)
                for (int i = -1; i <= 1; ++i)
                    if (const Spot q{p.x + i * f_.pitchX, p.y + j * f_.pitchY};
                        out.fields.front().contains(q, rules_.radius))
                        all.push_back(q);
        out.orbits.push_back(std::move(all));
        out.costs.push_back(static_cast<int>(orbit.size()));
    }
    return out;
}

double TileModel::wrap(double v, double period) {
    v = std::fmod(v + 2 * period, period);
    return period - v < 1e-7 ? 0.0 : v;
}

double TileModel::apart2(Spot a, Spot b) const {
    const double dx = std::abs(a.x - b.x), dy = std::abs(a.y - b.y);
    return squared(std::min(dx, f_.pitchX - dx)) + squared(std::min(dy, f_.pitchY - dy));
}

bool TileModel::tooNear(const Spots& a, const Spots& b) const {
    return std::any_of(a.begin(), a.end(), [&](Spot p) {
        return std::any_of(b.begin(), b.end(),
                           [&](Spot q) { return apart2(p, q) < squared(rules_.gap - 1e-7); });
    });
}

void TileModel::require(Spot w) {
    std::vector<int> row;
    for (std::size_t c = 0; c < orbits_.size(); ++c)
        if (std::any_of(orbits_[c].begin(), orbits_[c].end(),
                        [&](Spot p) { return apart2(p, w) <= squared(rules_.radius - 2e-6); }))
            row.push_back(static_cast<int>(c));
    model_.rows.push_back(std::move(row));
}

} // namespace bastewright
