#pragma once

#include "measures/geometry.h"

#include <optional>
#include <span>

namespace bastewright::check {

/// The first place where some rectangles fail to partition another.
struct PartitionFault {
    enum class Kind {
        empty,   ///< a part without area
        outside, ///< a part beyond the whole
        overlap, ///< a place in two parts
        hole     ///< a place in none
    };
    Kind kind = Kind::hole;
    Rect where; ///< the part, the shared place or the hole
};

/// Exact: every place of `whole` must lie in just one part, edges apart. Nothing where it does.
std::optional<PartitionFault> partitionFault(const Rect& whole, std::span<const Rect> parts);

} // namespace bastewright::check
