#pragma once

#include "sheets/flow.h"

/// A flow set in two columns: down the left one, then down the right one, then on the next page.
namespace bastewright::sheets {

/// Width of each of the two columns in a frame so wide.
double columnWidth(double width);

/// Blocks laid out for `columnWidth`; as one block of a flow.
Block inTwoColumns(Flow flow);

/// The columns that stand on one page, and what is left for the next.
struct ColumnCut {
    Block block;
    Flow rest;
    bool parted = false; ///< a heading ends a column: the height is too small for what it heads
};

/// Takes two columns of at most that height, of even height where all of it fits. Takes at least
/// one block; `block` is higher than asked only where a single block of the flow is.
ColumnCut cutColumns(const Flow& flow, double height);

} // namespace bastewright::sheets
