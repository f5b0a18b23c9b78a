#pragma once

#include "planners/crew/problem.h"

/// A large problem in parts that can be searched by themselves.
namespace bastewright::crew {

/// Activities that hang together by waiting for one another or by sharing an edge: the work of one
/// surface. Strands meet only in people and tools.
std::vector<std::vector<int>> strandsOf(const Problem& problem);

/// A strand cut at its barriers: activities that everything before leads to and everything after
/// waits for. Each section but the last ends with its barrier.
std::vector<std::vector<int>> sectionsOf(const Problem& problem, const std::vector<int>& strand);

/// Some activities as a problem of its own; what they wait for outside is left out.
struct Extract {
    std::vector<int> activities; ///< in the whole problem
    std::vector<int> strips;     ///< in the whole problem
    Problem problem;
};

Extract extract(const Problem& whole, std::vector<int> activities);

} // namespace bastewright::crew
