#pragma once

#include "planners/points/cover_search.h"

namespace bastewright::points {

/// One covering problem of the layout: a tile, a stretch of border, a corner, a
/// window of the top.
struct CoverTask {
    std::vector<Field> fields; ///< every place of them must be covered; more than 2·radius apart
    double radius = 0, gap = 0;
    Spots fixed;               ///< points that stay, with all copies that reach the field
    std::vector<Spots> orbits; ///< candidates, each with all copies that reach the field
    std::vector<int> costs;    ///< of each orbit; empty where each costs 1
    std::vector<int> start;    ///< orbits to begin with
    std::vector<int> kept;     ///< orbits that stay chosen
    /// Orbits for a place no candidate covers: the least breach of the rules
    /// there. May be empty.
    std::function<std::vector<Spots>(Spot)> relaxed;
    int relaxedCost = 2;

    int steps = 1000;
    int enough = 0;
    int below = std::numeric_limits<int>::max();
    std::uint64_t seed = 1;
    /// Called with every judged choice as cheap as the best so far, where set.
    /// False ends the search.
    std::function<bool(const std::vector<int>&, int cost)> onFound;
};

struct CoverAnswer {
    bool found = false; ///< the field is covered, but for `hopeless`; else `choice` is an attempt
    int cost = 0;
    std::vector<int> choice;   ///< ascending indices into `orbits`
    std::vector<Spots> orbits; ///< the task's, then the relaxed ones
    Spots hopeless;            ///< places nothing can cover
    int breaches = 0;          ///< chosen orbits that are relaxed
};

CoverAnswer solve(const CoverTask& task, std::stop_token stop);

} // namespace bastewright::points
