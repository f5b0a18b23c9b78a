#pragma once

#include "planners/passes/cuts.h"

#include <optional>
#include <vector>

namespace bastewright {

/// One axis of the table as the quilt lies on it. Places of the table are told by its low edge in
/// the quilt's frame.
struct AxisTable {
    Length size;
    Length insetLo, insetHi; ///< takes no point where the top goes on past that edge
    Length pastLo, pastHi;   ///< the table goes so far past an end of the top that lies on it
    Length anchor;           ///< basted strip that stays on the table, to its edge
    /// Where the top ends on the table at one end, so much of it past the other edge is pulled in.
    Length row;
    bool operator==(const AxisTable&) const = default;
};

/// What a table at a place covers of one axis: the cuts `lo` to `hi`.
struct AxisWindow {
    std::size_t lo = 0, hi = 0;
    Length at;           ///< the table's low edge
    bool pulled = false; ///< the last row at one end is worked after a pull
    auto operator<=>(const AxisWindow&) const = default;
};

/// The places from which everything between two cuts is inside the field; empty (hi < lo) where the
/// table is too small.
Interval placesFor(const AxisLines& lines, const AxisTable& table, std::size_t lo, std::size_t hi);

/// The basted strip that stays beside a cut, towards its low or its high side: the anchor, and one
/// line of points at least.
Length anchorBelow(const AxisLines& lines, const AxisTable& table, std::size_t cut);
Length anchorAbove(const AxisLines& lines, const AxisTable& table, std::size_t cut);

/// All that a table covers from a place; a last row at the far end included where the rest up to
/// the near end lies in the field. Nothing where no line of points does.
std::optional<AxisWindow> windowAt(const AxisLines& lines, const AxisTable& table, Length at);

/// True where the whole axis lies on the table, or does after the last row has been pulled in.
bool fits(const AxisLines& lines, const AxisTable& table);

/// The window at each end, and that with the middle of the table on the middle of the top.
AxisWindow lowEnd(const AxisLines& lines, const AxisTable& table);
AxisWindow highEnd(const AxisLines& lines, const AxisTable& table);

/// A first window and those that follow it outward to both ends, each with its anchor on what the
/// one before it covers; the first stands first. `toLow` and `toHigh` are the table on the way to
/// either end. Empty where it is too small to get on.
std::vector<AxisWindow> outwardFrom(const AxisLines& lines, const AxisTable& toLow,
                                    const AxisTable& toHigh, const AxisWindow& first);

/// Windows that hold a stretch of the axis: the lowest and the highest there are.
std::vector<AxisWindow> holding(const AxisLines& lines, const AxisTable& table, Interval stretch);

} // namespace bastewright
