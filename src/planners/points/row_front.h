#pragma once

#include "planners/points/row_choice.h"

#include <map>

namespace bastewright::points {

/// A choice that was laid on the top, how many pins it has and how many corners it leaves bare.
struct RowStart {
    const RowFrame* frame = nullptr;
    RowChoice choice;
    double pins = 0;
    int bare = 0;
    /// Pins, a bare corner counted as so many.
    double cost(double worth) const { return pins + worth * bare; }
};

/// Of many choices those that no other betters in pins and in bare corners.
class RowFront {
public:
    /// `mostBare`: choices that leave more bare are of interest only while there are no others.
    explicit RowFront(int mostBare)
        : mostBare_{mostBare} {}

    /// How many bare corners would still be of interest with so many pins; negative where none.
    int mostBare(std::size_t pins) const;
    void offer(RowStart start);
    /// At most so many, the cheapest first.
    std::vector<RowStart> cheapest(double worth, std::size_t most) const;

private:
    int mostBare_;
    std::map<std::size_t, RowStart> starts_; ///< by their pins; bare corners fall
};

/// The cheapest first.
void sortByCost(std::vector<RowStart>& of, double worth);

} // namespace bastewright::points
