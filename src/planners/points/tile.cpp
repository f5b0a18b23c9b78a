#include "planners/points/tile.h"

#include "planners/points/cover_task.h"
#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace bastewright::points {
namespace {

/// Turns and mirrors of the tile about the middle of its blocks.
enum class Move { stay, mirrorX, mirrorY, halfTurn, turn, turnBack, diagonal, antiDiagonal };

using Group = std::vector<Move>;

const std::vector<Group>& groups() {
    using enum Move;
    static const std::vector<Group> all{
        {stay},
        {stay, halfTurn},
        {stay, mirrorX, mirrorY, halfTurn},
        {stay, turn, halfTurn, turnBack},
        {stay, mirrorX},
        {stay, mirrorY},
        {stay, diagonal, antiDiagonal, halfTurn},
    };
    return all;
}

bool needsSquare(const Group& g) {
    return std::any_of(g.begin(), g.end(), [](Move m) { return m >= Move::turn; });
}

class Torus {
public:
    Torus(const Rules& rules, const BlockFrame& frame, const TileRequest& request)
        : rules_{rules}
        , width_{frame.pitchX * request.across}
        , length_{frame.pitchY * request.down}
        , middle_{(width_ - frame.pitchX + frame.blockX) / 2,
                  (length_ - frame.pitchY + frame.blockY) / 2}
        , corner_{frame.first.x + request.column * frame.pitchX,
                  frame.first.y + request.row * frame.pitchY} {}

    bool square() const {
        return std::abs(width_ - length_) < 1e-9 && std::abs(middle_.x - middle_.y) < 1e-9;
    }
    Field field() const { return {0, 0, width_, length_}; }

    Spot wrapped(Spot p) const {
        const auto wrap = [](double v, double period) {
            v -= std::floor(v / period) * period;
            return v > period - 1e-7 ? 0.0 : v;
        };
        return {wrap(p.x, width_), wrap(p.y, length_)};
    }

    Spot moved(Spot p, Move m) const {
        const double u = p.x - middle_.x, v = p.y - middle_.y;
        switch (m) {
        case Move::stay:
            return p;
        case Move::mirrorX:
            return wrapped({middle_.x - u, p.y});
        case Move::mirrorY:
            return wrapped({p.x, middle_.y - v});
        case Move::halfTurn:
            return wrapped({middle_.x - u, middle_.y - v});
        case Move::turn:
            return wrapped({middle_.x - v, middle_.y + u});
        case Move::turnBack:
            return wrapped({middle_.x + v, middle_.y - u});
        case Move::diagonal:
            return wrapped({middle_.x + v, middle_.y + u});
        case Move::antiDiagonal:
            return wrapped({middle_.x - v, middle_.y - u});
        }
        return p;
    }

    /// The place and its images under the group, once each.
    Spots orbit(Spot p, const Group& g) const {
        Spots out;
        for (const Move m : g) {
            const Spot q = moved(p, m);
            if (std::none_of(out.begin(), out.end(),
                             [&](Spot o) { return distanceSquared(o, q) < 1e-12; }))
                out.push_back(q);
        }
        return out;
    }

    /// Every copy that reaches the tile.
    Spots copies(const Spots& places) const {
        const int nx = static_cast<int>(std::ceil(rules_.radius / width_));
        const int ny = static_cast<int>(std::ceil(rules_.radius / length_));
        Spots out;
        for (const Spot p : places)
            for (int j = -ny; j <= ny; ++j)
                for (int i = -nx; i <= nx; ++i)
                    if (const Spot q{p.x + i * width_, p.y + j * length_};
                        field().contains(q, rules_.radius))
                        out.push_back(q);
        return out;
    }

    Spots candidates(double raster) const {
        Spots out;
        for (double y = 0; y < length_ - 1e-7; y += raster)
            for (double x = 0; x < width_ - 1e-7; x += raster)
                if (allowed({x, y}))
                    out.push_back({x, y});
        return out;
    }

    bool allowed(Spot p) const { return rules_.pin.angleAt(corner_ + p).has_value(); }

    double room(Spot p) const { return rules_.pin.mostRoom(corner_ + p).room; }

    Spots leastBreach(Spot w) const {
        Spots out;
        for (const Spot s : rules_.leastBreach(corner_ + w))
            out.push_back(wrapped(s - corner_));
        return out;
    }

private:
    const Rules& rules_;
    double width_, length_;
    Spot middle_, corner_;
};

class Collector {
public:
    void add(TilePattern p) {
        std::sort(p.points.begin(), p.points.end(),
                  [](Spot a, Spot b) { return a.y != b.y ? a.y < b.y : a.x < b.x; });
        if (!all_.empty() && p.points.size() > all_.front().points.size())
            return;
        if (!all_.empty() && p.points.size() < all_.front().points.size())
            all_.clear();
        for (TilePattern& known : all_)
            if (known.points == p.points) {
                if (known.symmetry < p.symmetry)
                    known = std::move(p);
                return;
            }
        all_.push_back(std::move(p));
    }
    std::size_t size() const { return all_.size(); }
    std::size_t fewest() const { return all_.empty() ? 0 : all_.front().points.size(); }
    std::vector<TilePattern> best(int most) {
        std::stable_sort(all_.begin(), all_.end(), [](const TilePattern& a, const TilePattern& b) {
            return a.symmetry != b.symmetry ? a.symmetry > b.symmetry : distances(a) < distances(b);
        });
        // Half of them the plainest; the others may still suit the borders better.
        const auto keep = static_cast<std::size_t>(most);
        if (all_.size() > keep) {
            std::rotate(all_.begin() + static_cast<std::ptrdiff_t>(keep - keep / 2),
                        all_.end() - static_cast<std::ptrdiff_t>(keep / 2), all_.end());
            all_.resize(keep);
        }
        return std::move(all_);
    }

private:
    std::vector<TilePattern> all_;
};

} // namespace

std::size_t distances(const TilePattern& pattern) {
    std::set<long> xs, ys;
    for (const Spot p : pattern.points) {
        xs.insert(std::lround(p.x * 1e4));
        ys.insert(std::lround(p.y * 1e4));
    }
    return xs.size() + ys.size();
}

std::vector<TilePattern> tilePatterns(const Rules& rules, const BlockFrame& frame,
                                      const TileRequest& request, std::stop_token stop) {
    const Torus torus{rules, frame, request};
    Spots places = torus.candidates(rules.step);
    // Where seams leave little room, the raster is made finer.
    const double all = torus.field().area() / squared(rules.step);
    if (static_cast<double>(places.size()) < 0.3 * all && rules.step > rules.fine * 1.5)
        places = torus.candidates(rules.step / 2);
    Collector found;
    for (int number = 0; number < static_cast<int>(groups().size()); ++number) {
        const Group& group = groups()[static_cast<std::size_t>(number)];
        if ((needsSquare(group) && !torus.square()) || (request.quick && group.size() > 1))
            continue;
        CoverTask task;
        task.fields = {torus.field()};
        task.radius = rules.radius;
        task.gap = rules.gap;
        // Without symmetry there are many equal patterns; a few dozen give the borders a choice.
        const bool plain = group.size() == 1 && !request.quick;
        const std::size_t wanted = plain ? 60 : 400;
        task.steps = plain ? 16 * request.steps : request.steps;
        task.below = found.fewest() == 0 ? task.below : static_cast<int>(found.fewest()) + 1;
        std::vector<Spots> own;
        std::set<std::pair<long, long>> seen;
        const auto key = [](Spot p) {
            return std::pair{std::lround(p.x * 1e5), std::lround(p.y * 1e5)};
        };
        for (const Spot p : places) {
            if (seen.contains(key(p)))
                continue;
            const Spots orbit = torus.orbit(p, group);
            for (const Spot q : orbit)
                seen.insert(key(q));
            if (std::all_of(orbit.begin(), orbit.end(), [&](Spot q) { return torus.allowed(q); })) {
                own.push_back(orbit);
                task.orbits.push_back(torus.copies(orbit));
                task.costs.push_back(static_cast<int>(orbit.size()));
            }
        }
        if (group.size() == 1) // a breach is looked for once, without symmetry
            task.relaxed = [&](Spot w) {
                std::vector<Spots> out;
                for (const Spot s : torus.leastBreach(w)) {
                    own.push_back({s});
                    out.push_back(torus.copies({s}));
                }
                return out;
            };
        task.onFound = [&](const std::vector<int>& choice, int) {
            TilePattern pattern{
                request.across, request.down, {}, number, static_cast<int>(group.size())};
            for (const int c : choice)
                for (const Spot p : own[static_cast<std::size_t>(c)])
                    pattern.points.push_back(p);
            pattern.room = rules.pin.clear();
            for (const Spot p : pattern.points)
                if (!torus.allowed(p))
                    pattern.room = std::min(pattern.room, torus.room(p));
            found.add(std::move(pattern));
            return found.size() < wanted;
        };
        if (plain) { // how few first, then how many different ones
            CoverTask fewest = task;
            fewest.onFound = {};
            fewest.steps = 4 * request.steps;
            const CoverAnswer answer = solve(fewest, stop);
            if (answer.found && answer.breaches == 0) {
                task.start = answer.choice;
                task.below = answer.cost + 1;
            }
            own.resize(task.orbits.size());
        }
        const CoverAnswer answer = solve(task, stop);
        if (group.size() == 1 && !answer.found)
            return {};
    }
    return found.best(request.most);
}

std::optional<TilePattern> varied(const Rules& rules, const BlockFrame& frame,
                                  const TileRequest& request, const TilePattern& pattern,
                                  Dice& dice) {
    if (pattern.points.empty())
        return {};
    const Torus torus{rules, frame, request};
    const Group& group = groups()[static_cast<std::size_t>(pattern.group)];
    const Spot old = pattern.points[dice.below(pattern.points.size())];
    const auto shift = [&] { return (static_cast<double>(dice.below(9)) - 4) * rules.step / 2; };
    const double dx = shift(), dy = shift();
    const Spot place = torus.wrapped({old.x + dx, old.y + dy});
    const Spots before = torus.orbit(old, group), after = torus.orbit(place, group);
    if (place == old || before.size() != after.size() ||
        !std::all_of(after.begin(), after.end(), [&](Spot p) { return torus.allowed(p); }))
        return {};
    TilePattern out = pattern;
    std::erase_if(out.points, [&](Spot p) {
        return std::any_of(before.begin(), before.end(),
                           [&](Spot b) { return distanceSquared(b, p) < 1e-12; });
    });
    out.points.insert(out.points.end(), after.begin(), after.end());
    if (out.points.size() != pattern.points.size())
        return {};
    const Spots all = torus.copies(out.points);
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t k = i + 1; k < all.size(); ++k)
            if (distanceSquared(all[i], all[k]) < squared(rules.gap - 1e-7))
                return {};
    if (!holes(all, torus.field(), rules.radius).empty())
        return {};
    std::sort(out.points.begin(), out.points.end(),
              [](Spot a, Spot b) { return a.y != b.y ? a.y < b.y : a.x < b.x; });
    return out;
}

} // namespace bastewright::points
