#include "planners/points/layout.h"

#include "planners/points/cover_task.h"
#include "planners/points/holes.h"

#include <algorithm>
#include <optional>

namespace bastewright::points {
namespace {

/// Holes that lie near each other, as one box.
std::vector<Field> boxesAround(const Spots& holes, double near) {
    std::vector<Field> boxes;
    for (const Spot h : holes) {
        Field grown{h.x, h.y, h.x, h.y};
        for (bool again = true; again;) {
            again = false;
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                const Field& b = boxes[i];
                if (b.x0 > grown.x1 + near || b.x1 < grown.x0 - near || b.y0 > grown.y1 + near ||
                    b.y1 < grown.y0 - near)
                    continue;
                // A box that would grow long is kept apart: what it needs is found
                // piece by piece.
                const Field both{std::min(b.x0, grown.x0), std::min(b.y0, grown.y0),
                                 std::max(b.x1, grown.x1), std::max(b.y1, grown.y1)};
                if (both.width() > 6 * near || both.length() > 6 * near)
                    continue;
                grown = both;
                boxes.erase(boxes.begin() + static_cast<std::ptrdiff_t>(i));
                again = true;
                break;
            }
        }
        boxes.push_back(grown);
    }
    return boxes;
}

Field clipped(Field f, const Field& top) {
    return {std::max(f.x0, top.x0), std::max(f.y0, top.y0), std::min(f.x1, top.x1),
            std::min(f.y1, top.y1)};
}

/// How far a repair may go.
enum class Means {
    near,  ///< loose points near the hole move
    wider, ///< and those farther off
    breach ///< and where nothing else helps, a point breaches its rule, as little as possible
};

bool repairBox(Layout& layout, const Rules& rules, const Field& around, Means means, int steps,
               std::uint64_t seed) {
    CoverTask task;
    task.radius = rules.radius;
    task.gap = rules.gap;
    task.steps = steps;
    task.seed = seed;
    const double reach = means == Means::near ? rules.radius : 1.75 * rules.radius;
    const Field room = clipped(around.grown(reach), rules.top());
    const Field field = clipped(room.grown(rules.radius), rules.top());
    task.fields = {field};
    std::vector<Layout::Pin> kept;
    std::vector<Spot> own;
    for (const auto& p : layout.pins) {
        if (p.loose && room.contains(p.at)) {
            own.push_back(p.at);
            continue;
        }
        kept.push_back(p);
        if (field.contains(p.at, rules.radius))
            task.fixed.push_back(p.at);
    }
    for (const Spot s : own) {
        task.start.push_back(static_cast<int>(task.orbits.size()));
        task.orbits.push_back({s});
    }
    for (const Spot s : rules.places(room))
        if (std::find(own.begin(), own.end(), s) == own.end())
            task.orbits.push_back({s});
    if (means == Means::breach)
        task.relaxed = [&](Spot w) {
            std::vector<Spots> out;
            if (!room.contains(w)) // another box's hole
                return out;
            for (const Spot s : rules.leastBreach(w))
                out.push_back({s});
            return out;
        };
    // A repair is never cut short: a layout is complete before it is good.
    const CoverAnswer answer = solve(task, {});
    if (!answer.found || std::any_of(answer.hopeless.begin(), answer.hopeless.end(),
                                     [&](Spot h) { return room.contains(h); }))
        return false;
    for (const int c : answer.choice)
        for (const Spot s : answer.orbits[static_cast<std::size_t>(c)])
            kept.push_back({s, true});
    layout.pins = std::move(kept);
    return true;
}

/// Where a point for a hole is allowed, as far from all others as can be.
std::optional<Spot> forcedPlace(const Layout& layout, const Rules& rules, Spot hole) {
    Spots places;
    for (const Spot s : rules.places(Field{hole.x, hole.y, hole.x, hole.y}.grown(rules.radius)))
        if (distanceSquared(s, hole) < squared(0.99 * rules.radius))
            places.push_back(s);
    if (places.empty())
        places = rules.leastBreach(hole);
    std::optional<Spot> best;
    double most = -1;
    for (const Spot s : places) {
        double nearest = 1e18;
        for (const auto& p : layout.pins)
            nearest = std::min(nearest, distanceSquared(p.at, s));
        if (nearest > most) {
            most = nearest;
            best = s;
        }
    }
    return best;
}

/// A point for every hole that is left.
void force(Layout& layout, const Rules& rules) {
    for (int round = 0; round < 100; ++round) {
        const Spots open = holes(layout.spots(), rules.top(), rules.radius);
        if (open.empty())
            return;
        const std::size_t before = layout.pins.size();
        for (const Spot hole : open) {
            const bool filled = std::any_of(
                layout.pins.begin() + static_cast<std::ptrdiff_t>(before), layout.pins.end(),
                [&](const Layout::Pin& p) {
                    return distanceSquared(p.at, hole) < squared(rules.radius - kCoverSlack);
                });
            if (filled)
                continue;
            if (const auto at = forcedPlace(layout, rules, hole))
                layout.pins.push_back({*at, true});
        }
        if (layout.pins.size() == before)
            return;
    }
}

} // namespace

Spots Layout::spots() const {
    Spots out;
    out.reserve(pins.size());
    for (const Pin& p : pins)
        out.push_back(p.at);
    return out;
}

bool repair(Layout& layout, const Rules& rules, int steps, std::stop_token stop) {
    for (int round = 0; round < 10; ++round) {
        const Spots open = holes(layout.spots(), rules.top(), rules.radius);
        if (open.empty())
            return round > 0;
        const std::uint64_t seed = static_cast<std::uint64_t>(round) + 1;
        const int wider = round / 2; // every second round
        for (const Field& box : boxesAround(open, 2 * rules.radius)) {
            if (stop.stop_requested())
                return false;
            for (const Means means : {Means::near, Means::wider, Means::breach})
                if (repairBox(layout, rules, box.grown(wider * rules.radius / 2), means, steps,
                              seed))
                    break;
        }
    }
    force(layout, rules);
    return true;
}

void fill(Layout& layout, const Rules& rules, int steps) {
    CoverTask task;
    task.fields = {rules.top()};
    task.radius = rules.radius;
    task.gap = rules.gap;
    task.steps = steps;
    for (const auto& p : layout.pins) {
        task.start.push_back(static_cast<int>(task.orbits.size()));
        task.orbits.push_back({p.at});
    }
    for (const Spot s : rules.places(rules.top()))
        task.orbits.push_back({s});
    task.relaxed = [&](Spot w) {
        std::vector<Spots> out;
        for (const Spot s : rules.leastBreach(w))
            out.push_back({s});
        return out;
    };
    const CoverAnswer answer = solve(task, {});
    layout.pins.clear();
    for (const int c : answer.choice)
        layout.pins.push_back({answer.orbits[static_cast<std::size_t>(c)].front(), true});
}

void prune(Layout& layout, const Rules& rules) {
    for (std::size_t i = layout.pins.size(); i-- > 0;) {
        const Spot at = layout.pins[i].at;
        // One of a row stays, but not beside one that had to be set closer than is allowed.
        const auto crowds = [&](const Layout::Pin& p) {
            return &p != &layout.pins[i] && distanceSquared(p.at, at) < squared(rules.gap - 1e-6);
        };
        if (!layout.pins[i].loose && std::none_of(layout.pins.begin(), layout.pins.end(), crowds))
            continue;
        const Field around =
            clipped(Field{at.x, at.y, at.x, at.y}.grown(rules.radius), rules.top());
        // All that reach its corners: what is open then is what the point itself covers.
        Spots near;
        for (std::size_t k = 0; k < layout.pins.size(); ++k)
            if (k != i && distanceSquared(layout.pins[k].at, at) <= squared(2.5 * rules.radius))
                near.push_back(layout.pins[k].at);
        if (covered(near, around, rules.radius))
            layout.pins.erase(layout.pins.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

void tidy(Layout& layout) {
    std::sort(layout.pins.begin(), layout.pins.end(), [](const auto& a, const auto& b) {
        return a.at.y != b.at.y ? a.at.y < b.at.y : a.at.x < b.at.x;
    });
    const auto last = std::unique(layout.pins.begin(), layout.pins.end(),
                                  [](const auto& a, const auto& b) { return a.at == b.at; });
    layout.pins.erase(last, layout.pins.end());
}

} // namespace bastewright::points
