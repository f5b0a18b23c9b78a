#include "session/private/tables_taken.h"

#include <algorithm>

namespace bastewright {

std::pair<Length, Length> sizeOf(Length a, Length b) {
    return {std::min(a, b), std::max(a, b)};
}

Sizes tablesOf(const SurfacePlan& surface) {
    Sizes out;
    for (const Rect& t : surface.tables)
        ++out[sizeOf(t.width(), t.length())];
    return out;
}

void atLeast(Sizes& all, const Sizes& some) {
    for (const auto& [size, count] : some)
        all[size] = std::max(all[size], count);
}

bool isOffTheTables(const Plan& plan, const LiveState& state, int job) {
    const auto& passes = plan.quilts[static_cast<std::size_t>(job)].passes;
    return passes.empty() || state.released.contains({job, passes.back().number});
}

std::map<int, Sizes> tablesTaken(const Plan& plan, const LiveState& state) {
    std::map<int, Sizes> out;
    for (int q = 0; q < std::ssize(plan.quilts); ++q)
        if (!isOffTheTables(plan, state, q)) {
            const SurfacePlan& surface = plan.quilts[static_cast<std::size_t>(q)].surface;
            atLeast(out[surface.number], tablesOf(surface));
        }
    return out;
}

} // namespace bastewright
