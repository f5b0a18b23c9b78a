#pragma once

#include "measures/geometry.h"

#include <optional>
#include <span>
#include <vector>

namespace bastewright::backing {

/// How wide a strip may be once sewn in.
struct StripRange {
    Length least, most;
};

/// A line seams keep away from.
struct KeepAway {
    Length at, clear;
};

/// Places the seams between strips that follow one another from 0 to `total`, so that each strip is
/// in its range and no seam lies nearer than `clear` to a line: as near to `wanted` (one place a
/// seam) as the last seam first allows. Nothing where no places exist; exact, by the sets of places
/// each seam can reach. Empty result for a single strip that fits.
std::optional<std::vector<Length>> placeSeams(std::span<const StripRange> strips, Length total,
                                              std::span<const KeepAway> lines,
                                              std::span<const Length> wanted);

/// Least size that strip number `which` needs, its own range apart, so that the seams have places:
/// at least its `least`. Nothing where no size does. Exact.
std::optional<Length> leastSize(std::span<const StripRange> strips, std::size_t which, Length total,
                                std::span<const KeepAway> lines);

} // namespace bastewright::backing
