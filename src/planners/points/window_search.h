#pragma once

#include "planners/points/cover_search.h"
#include "planners/points/layout.h"

namespace bastewright::points {

/// The whole top as one covering problem that is improved window by window:
/// what lies outside a window stays, inside one point fewer is tried for, and
/// where that fails the points are shuffled so that room collects somewhere.
class WindowSearch {
public:
    /// `start` covers the top.
    WindowSearch(const Rules& rules, const Layout& start);

    /// One pass of overlapping windows over the top, at an offset that `dice`
    /// choose. Returns the number of points saved.
    int pass(double windowSize, int steps, Dice& dice, std::stop_token stop);

    Layout layout() const;
    int size() const { return search_.cost(); }

private:
    void improve(const Field& window, int steps, Dice& dice, std::stop_token stop);

    const Rules& rules_;
    CoverSearch search_;
};

} // namespace bastewright::points
