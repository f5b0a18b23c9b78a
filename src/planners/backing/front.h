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

/// The layouts that can be sewn and that no other beats in cost, seams and waste at once (with
/// several cloths, where it saves much time, in cost and seams), best first: score, then seams that
/// keep off the lines, then `better`. The first is the plan.
struct Front {
    std::vector<Choice> choices;
    std::optional<Layout> runnerUp; ///< the next best that takes other lengths or other blocks
};
Front frontOf(const Problem& problem, const std::vector<Bolt>& bolts);

/// The best layout whose score is below `limit` with a narrow column of cloth the job does not
/// list, where there is one.
std::optional<Choice> withUnlisted(const Problem& problem, const std::vector<Bolt>& bolts,
                                   double limit);

/// The best layout alone, where there is one whose score is below `limit`; lines do not matter.
std::optional<Layout> bestOf(const Problem& problem, double limit);

} // namespace bastewright::backing
