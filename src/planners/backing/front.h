#pragma once

#include "planners/backing/arrangement.h"

#include <optional>
#include <vector>

namespace bastewright::backing {

struct Choice {
    Layout layout;
    Arrangement arrangement;
    bool keepsAway = true; ///< its seams keep off the lines of the problem
};

/// The layouts that can be sewn and that no other beats in cost, seams and waste at once, best
/// first
/// (`better`); the first is the plan. Among equal buys one that keeps its seams off the lines comes
/// first.
struct Front {
    std::vector<Choice> choices;
    std::optional<Layout> runnerUp; ///< the next best that is not the same layout bought twice
    bool priced = false;            ///< cost is money
};
Front frontOf(const Problem& problem, const std::vector<Bolt>& bolts);

/// The best layout alone.
std::optional<Layout> bestOf(const Problem& problem);

} // namespace bastewright::backing
