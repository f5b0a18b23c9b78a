#pragma once

#include "job/top.h"

#include <optional>

/// A grid of blocks beside what was measured.
namespace bastewright {

/// Where a top measures otherwise than its grid adds up to: the border that comes out at left and
/// right, and at head and foot, and what the grid says of it. The grid changes nothing measured.
struct BorderOff {
    Length comesOut, planned;
    bool differs() const { return comesOut != planned; }
};
struct GridOff {
    BorderOff sides, ends;
};
/// Nothing without a grid. A border that comes out below nothing: the blocks alone need more.
std::optional<GridOff> gridOff(const Top& top);

/// The borders as what the blocks leave of the measured size; none where they leave nothing.
void setBordersByMeasure(Top& top);

} // namespace bastewright
