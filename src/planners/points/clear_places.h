#pragma once

#include "planners/points/rules.h"

#include <cstdint>

namespace bastewright::points {

/// Where a hand puts the pin whose mark is too near a seam: the nearest place on the raster,
/// counted from the head-left corner of the top, where a pin obeys its rule; of places equally near
/// the one further left, then the one nearer to the head.
///
/// Found when asked for and remembered, since a search asks for the same places again and again.
class ClearPlaces {
public:
    explicit ClearPlaces(const Rules& rules);

    struct Found {
        Spot at;
        bool clear = true; ///< false where nothing in reach is: the place of most room nearby, or
                           ///< the nearest that keeps the edge
    };
    /// Number of a raster place (it must be on the top).
    Found nearest(int column, int row);

private:
    bool clear(int column, int row);
    int search(int column, int row);
    int roomiest(int column, int row);
    double roomAt(int column, int row);
    Spot placeOf(int index) const { return {index % columns_ * fine_, index / columns_ * fine_}; }

    const Rules& rules_;
    double fine_;
    int columns_, rows_, reach_, near_;
    std::vector<std::int8_t> clear_;    ///< -1 not known yet
    std::vector<std::int32_t> nearest_; ///< -1 not known yet; of what is not clear minus 2 less
    std::vector<double> room_;          ///< found so far, where any was asked for
    std::vector<std::pair<int, int>> rings_; ///< offsets by distance, left and head first
};

} // namespace bastewright::points
