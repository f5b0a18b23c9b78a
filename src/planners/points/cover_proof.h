#pragma once

#include "planners/points/cover_task.h"

namespace bastewright::points {

/// What an exact search of a covering task has shown.
struct CoverProof {
    bool ended = false; ///< everything was looked at; else the limit of nodes came first
    int cost = 0;       ///< least cost found; 0: none
    int bound = 0;      ///< proven: no choice of the candidates costs less
    std::vector<int> choice; ///< ascending
    long nodes = 0;
};

/// The least cost of a task of candidates (`orbits`, `costs`, `fields`, `fixed`, `radius`, `gap`,
/// `below`, `onFound`), by branch and bound.
///
/// A choice is looked for that covers a raster of witnesses; branches are the candidates that cover
/// the open witness with the fewest of them. What is open must be covered by what may still be
/// spent, at the rate of the best candidate. A choice that covers all witnesses is judged
/// continuously, and what it missed becomes a witness: so a found choice is one, and since the
/// witnesses are some of the places that must be covered, a cost that they refute is refuted.
///
/// Costs are tried from below, each with at most `nodes` branchings: where one is refuted `bound`
/// grows, where one is found `onFound` gets every choice of that cost until it says false.
CoverProof prove(const CoverTask& task, long nodes, std::stop_token stop = {});

} // namespace bastewright::points
