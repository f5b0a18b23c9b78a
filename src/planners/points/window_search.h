#pragma once

#include "planners/points/cover_search.h"
#include "planners/points/layout.h"
#include "planners/points/place_map.h"

namespace bastewright::points {

/// The whole top as one covering problem that is improved window by window:
/// what lies outside a window stays, inside one point fewer is tried for, and
/// where that fails the points are shuffled so that room collects somewhere.
class WindowSearch {
public:
    WindowSearch(const Rules& rules, const PlaceMap& map);

    /// Begins anew with points at these places, completed and without those that are not needed.
    /// False where no allowed place reaches all of the top; the rest is covered.
    bool begin(const Spots& at);
    /// Begins anew with exactly these points, which cover the top. Where no point is allowed, a
    /// point stays for good, and costs as much as 20 others.
    void take(const Spots& at);

    /// One pass of overlapping windows over the top, at an offset that `dice`
    /// choose. Returns by how much the cost fell.
    int pass(double windowSize, int steps, Dice& dice, std::stop_token stop);

    Spots spots() const;
    int cost() const { return search_.cost(); }

private:
    int candidateAt(Spot at);
    bool require(Spot witness);
    bool judge(const Field& field);
    void improve(const Field& window, int steps, Dice& dice, std::stop_token stop);

    const Rules& rules_;
    const PlaceMap& map_;
    CoverSearch search_;
    Buckets known_; ///< candidates
};

} // namespace bastewright::points
