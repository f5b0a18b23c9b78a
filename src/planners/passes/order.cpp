#include "planners/passes/order.h"

#include <cassert>
#include <map>

namespace bastewright {
namespace {

struct State {
    std::uint64_t done = 0;
    std::size_t last = 0;
    auto operator<=>(const State&) const = default;
};
struct Best {
    Length shifted;
    State from;
};

constexpr std::uint64_t bit(std::size_t i) {
    return std::uint64_t{1} << i;
}

/// Keeps the `widest` shortest of a layer.
void narrow(std::map<State, Best>& layer, std::size_t widest) {
    std::vector<std::pair<Length, State>> all;
    for (const auto& [state, best] : layer)
        all.push_back({best.shifted, state});
    std::ranges::sort(all);
    for (std::size_t i = widest; i < all.size(); ++i)
        layer.erase(all[i].second);
}

} // namespace

WorkingOrder bestOrder(const Layout& layout, std::size_t widest) {
    const auto n = layout.areas.size();
    assert(n > 0 && n <= kMostPasses);
    std::vector<std::uint64_t> needs(n, 0);
    for (std::size_t i = 0; i < n; ++i)
        for (const std::size_t k : layout.areas[i].needs)
            needs[i] |= bit(k);

    WorkingOrder out;
    std::vector<std::map<State, Best>> layers(1);
    layers[0][{bit(layout.first), layout.first}] = {};
    for (std::size_t depth = 1; depth < n; ++depth) {
        std::map<State, Best> next;
        for (const auto& [state, best] : layers.back())
            for (std::size_t i = 0; i < n; ++i) {
                if ((state.done & bit(i)) != 0 || (needs[i] & ~state.done) != 0)
                    continue;
                const Length shifted =
                    best.shifted + way(shiftBetween(layout.areas[state.last], layout.areas[i]));
                const State to{state.done | bit(i), i};
                const auto [at, fresh] = next.try_emplace(to, Best{shifted, state});
                if (!fresh && shifted < at->second.shifted)
                    at->second = {shifted, state};
            }
        if (next.size() > widest) {
            out.exact = false;
            narrow(next, widest);
        }
        layers.push_back(std::move(next));
    }

    auto end = layers.back().begin();
    for (auto i = layers.back().begin(); i != layers.back().end(); ++i)
        if (i->second.shifted < end->second.shifted)
            end = i;
    out.shifted = end->second.shifted;
    State at = end->first;
    for (std::size_t depth = n; depth-- > 0;) {
        out.areas.push_back(at.last);
        at = layers[depth].at(at).from;
    }
    std::ranges::reverse(out.areas);
    return out;
}

} // namespace bastewright
