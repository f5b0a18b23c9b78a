#include "planners/points/tile.h"

#include "planners/points/cover_task.h"
#include "planners/points/holes.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace bastewright::points {
namespace {

using enum Move::Turn;

/// What a pattern of one tile may be symmetric to: nothing, then turns and mirrors about its middle.
const std::vector<Group>& groups() {
    static const std::vector<Group> all{
        {},
        {{halfTurn}},
        {{mirrorX}, {mirrorY}},
        {{turn}},
        {{mirrorX}},
        {{mirrorY}},
        {{diagonal}, {antiDiagonal}},
    };
    return all;
}

/// Of a pair of blocks, where `across` and `down` lead from the first to the second: each turned
/// into itself, the second the first turned half round, or each its own mirror image.
const std::vector<Group>& pairGroups(bool across) {
    static const std::vector<Group> along{
        {{halfTurn}}, {{halfTurn, 1, 0}}, {{mirrorX}, {mirrorY}}};
    static const std::vector<Group> below{
        {{halfTurn}}, {{halfTurn, 0, 1}}, {{mirrorX}, {mirrorY}}};
    return across ? along : below;
}

/// The moves of a request's tile: about its middle, which lies so many half pitches on from that of
/// its first block.
std::vector<Group> groupsOf(const TileRequest& request) {
    if (request.pair)
        return pairGroups(request.across == 2);
    std::vector<Group> out = groups();
    for (Group& g : out)
        for (Move& m : g) {
            const bool turnsX = m.turn != mirrorY, turnsY = m.turn != mirrorX;
            m.across = turnsX ? request.across - 1 : 0;
            m.down = turnsY ? request.down - 1 : 0;
            if (m.turn == Move::Turn::turn) // (u, v) to (-v, u)
                m.down = 0;
            if (m.turn == diagonal)
                m.across = m.down = 0;
        }
    return out;
}

bool needsSquare(const Group& g) {
    return std::any_of(g.begin(), g.end(), [](const Move& m) {
        return m.turn >= Move::Turn::turn;
    });
}

int order(const Torus& torus, const Group& g) {
    // A place on no mirror line and no centre of turning has as many images as the group has moves.
    const Field f = torus.field();
    return static_cast<int>(torus.orbit({f.width() * 0.1234, f.length() * 0.2345}, g).size());
}

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
    const TilePattern& front() const { return all_.front(); }
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

namespace {

/// Searches one tile for patterns, group by group.
class TileSearch {
public:
    TileSearch(const Rules& rules, const TileRequest& request, const Torus& torus)
        : rules_{rules}
        , request_{request}
        , torus_{torus}
        , places_{torus.candidates(rules.step)} {
        if (const double raster = rules.rasterFor(torus.field(), places_.size());
            raster < rules.step)
            places_ = torus.candidates(raster);
    }

    /// Patterns that a group leaves as they are; false where none was found.
    bool look(const Group& group, std::stop_token stop) {
        CoverTask task = begun(group);
        if (fewest_ < std::numeric_limits<int>::max())
            task.below = fewest_ + 1;
        if (group.empty()) // a breach is looked for once, without symmetry
            task.relaxed = [&](Spot w) {
                std::vector<Spots> out;
                for (const Spot s : torus_.leastBreach(w)) {
                    own_.push_back({s});
                    out.push_back(torus_.copies({s}));
                }
                return out;
            };
        // How few first, then how many different ones: they give the borders a choice.
        const CoverAnswer fewest = solve(task, stop);
        if (!fewest.found)
            return false;
        fewest_ = fewest.cost;
        if (fewest_ >= request_.below)
            return true;
        task.relaxed = {};
        for (std::size_t c = task.orbits.size(); c < fewest.orbits.size(); ++c) {
            task.orbits.push_back(fewest.orbits[c]);
            task.costs.push_back(task.relaxedCost);
        }
        task.start = fewest.choice;
        task.below = fewest.cost + 1;
        task.steps = request_.quick ? 1 : request_.steps / 3;
        collect(std::move(task), group, 400, stop);
        return true;
    }

    /// Patterns without symmetry, from the plainest that was found.
    void loosen(int steps, std::stop_token stop) {
        if (found_.size() == 0 || found_.front().room < rules_.pin.clear())
            return;
        CoverTask task = begun({});
        for (const Spot p : found_.front().points)
            for (std::size_t c = 0; c < own_.size(); ++c)
                if (distanceSquared(own_[c].front(), p) < 1e-12)
                    task.start.push_back(static_cast<int>(c));
        task.below = static_cast<int>(found_.fewest()) + 1;
        task.steps = steps;
        collect(std::move(task), {}, found_.size() + 120, stop);
    }

    std::vector<TilePattern> best(int most) { return found_.best(most); }

private:
    CoverTask begun(const Group& group) {
        CoverTask task;
        task.fields = {torus_.field()};
        task.radius = rules_.radius;
        task.gap = rules_.gap;
        task.steps = request_.steps;
        own_.clear();
        std::set<std::pair<long, long>> seen;
        const auto key = [](Spot p) {
            return std::pair{std::lround(p.x * 1e5), std::lround(p.y * 1e5)};
        };
        for (const Spot p : places_) {
            if (seen.contains(key(p)))
                continue;
            const Spots orbit = torus_.orbit(p, group);
            for (const Spot q : orbit)
                seen.insert(key(q));
            if (std::all_of(orbit.begin(), orbit.end(),
                            [&](Spot q) { return torus_.allowed(q); })) {
                own_.push_back(orbit);
                task.orbits.push_back(torus_.copies(orbit));
                task.costs.push_back(static_cast<int>(orbit.size()));
            }
        }
        return task;
    }

    void collect(CoverTask task, const Group& group, std::size_t wanted, std::stop_token stop) {
        const int symmetry = order(torus_, group);
        task.onFound = [&](const std::vector<int>& choice, int) {
            TilePattern pattern{request_.across, request_.down, {}, group, symmetry};
            for (const int c : choice)
                for (const Spot p : own_[static_cast<std::size_t>(c)])
                    pattern.points.push_back(p);
            pattern.room = rules_.pin.clear();
            for (const Spot p : pattern.points)
                if (!torus_.allowed(p))
                    pattern.room = std::min(pattern.room, torus_.room(p));
            found_.add(std::move(pattern));
            return found_.size() < wanted;
        };
        solve(task, stop);
    }

    const Rules& rules_;
    const TileRequest& request_;
    const Torus& torus_;
    Spots places_;
    Collector found_;
    int fewest_ = std::numeric_limits<int>::max();
    std::vector<Spots> own_; ///< the present candidates on the tile itself
};

} // namespace

std::vector<TilePattern> tilePatterns(const Rules& rules, const BlockFrame& frame,
                                      const TileRequest& request, std::stop_token stop) {
    const Torus torus{rules, frame, request.across, request.down, request.column, request.row};
    TileSearch search{rules, request, torus};
    for (const Group& group : groupsOf(request)) {
        if ((needsSquare(group) && !torus.square()) || (request.quick && !group.empty()))
            continue;
        if (!search.look(group, stop) && group.empty())
            return {};
    }
    if (!request.quick)
        search.loosen(3 * request.steps, stop);
    return search.best(request.most);
}

std::optional<TilePattern> varied(const Rules& rules, const BlockFrame& frame,
                                  const TileRequest& request, const TilePattern& pattern,
                                  Dice& dice) {
    if (pattern.points.empty())
        return {};
    const Torus torus{rules, frame, request.across, request.down, request.column, request.row};
    const Group& group = pattern.group;
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
