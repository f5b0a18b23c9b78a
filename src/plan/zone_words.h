#pragma once

#include "measures/sentence.h"
#include "plan/pin_rows.h"
#include "plan/zone.h"

#include <optional>

/// Which rows, and which marks of them, a zone has: what a helper is told in place of coordinates.
namespace bastewright {

/// Marks of a row, both ends counted in; none given: from the row's first, to its last.
struct MarkSpan {
    std::optional<int> from, to;
    auto operator<=>(const MarkSpan&) const = default;
};

/// Neighbouring rows of which a zone has the same marks. Odd and even rows have ribbons of their
/// own, so where a zone ends half a step over, its marks differ by one.
struct RowsPart {
    int first = 1, last = 1; ///< rows, from 1
    MarkSpan odd, even;
    auto operator<=>(const RowsPart&) const = default;
};

/// The zone's rows from the first to the last, in as few parts as rows taken one after another
/// need. Whoever has the ribbons finds every point of the zone by them, except single ones. Marks
/// that are left out in a row count for neither side.
std::vector<RowsPart> rowsOf(const Zone& zone, const PinRows& rows);

/// The same in words: 'rows 1–8 as far as mark 11', 'rows 9–13 as far as mark 10'. Marks count from
/// the left (or from the head), as on the ribbons. Empty for a zone without points in rows.
Sentences rowsPartsWords(const Zone& zone, const PinRows& rows);

} // namespace bastewright
