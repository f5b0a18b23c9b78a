#pragma once

#include "measures/geometry.h"

#include <map>
#include <optional>
#include <vector>

/// Pins (dots, stitches) by their rows: parallel rows, of pins and dots every second one half a
/// step over, placed by two marked ribbons in place of coordinates. In the quilt's own frame; rows
/// and marks count from 1, from the head-left corner.
namespace bastewright {

/// A pin that lies beside its mark, because there it would be too near a seam.
struct PinAside {
    Length mark; ///< of the ribbon
    Point to;
    auto operator<=>(const PinAside&) const = default;
};

/// One row: where it lies on the side ribbon, and at which marks of the odd or the even ribbon its
/// pins are. As a rule at every mark; where a pin has no room, its mark is left out.
struct PinRow {
    Length at;
    std::vector<Length> places;
    std::vector<PinAside> aside; ///< those of the places whose pin lies beside the mark, ascending
    auto operator<=>(const PinRow&) const = default;
};

/// Marks along a row, for the first, third, fifth … row and for the others; and down the side, one
/// for each row. Measured from the left and the head edge of the top.
struct Ribbons {
    std::vector<Length> odd, even, side;
    auto operator<=>(const Ribbons&) const = default;
};

struct PinRows {
    enum class Along { width, length }; ///< rows run across the quilt, or from head to foot
    Along along = Along::width;
    Length gap, step; ///< between rows, between pins of a row, where nothing had to move off a seam
    std::vector<PinRow> lines;
    Ribbons ribbons;
    /// So far may every pin be off its place, in any direction, before a place of the top is
    /// farther from a pin than the spacing allows.
    Length slack;
    std::vector<Point> singles; ///< pins in no row, for places that the rows leave bare
    auto operator<=>(const PinRows&) const = default;
};

/// A place by its ribbons.
struct RowMark {
    int row = 1, mark = 1;
    auto operator<=>(const RowMark&) const = default;
};

/// The place at so far along a row and so far down the side.
Point placeIn(PinRows::Along along, Length onRow, Length side);
/// The marks of this row's ribbon.
const std::vector<Length>& marksOf(const PinRows& rows, std::size_t line);

/// Which row and which mark a placed point belongs to, pins beside their mark included.
class RowMarks {
public:
    explicit RowMarks(const PinRows& rows);
    /// Nothing for single pins and for places that are not of these rows.
    std::optional<RowMark> of(Point at) const;
    const std::map<Point, RowMark>& all() const { return marks_; }

private:
    std::map<Point, RowMark> marks_;
};

} // namespace bastewright
