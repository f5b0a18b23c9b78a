#pragma once

#include "planners/backing/layout.h"

#include <vector>

namespace bastewright::backing {

/// Every way to sew a column `width` wide (with allowances) from blocks of one cloth: from what is
/// left of the length on hand, from bought cloth, or both; with the threads of the other panels or
/// turned a quarter (not where the print has one way up). `layout` says what else is cut from the
/// bolts. Only columns whose joins can be placed.
std::vector<Column> columnsOf(const Problem& problem, const std::vector<Bolt>& bolts,
                              const Layout& layout, int fabric, Length width);

/// Where the joins between a column's blocks go, from one end; blocks on hand first or last.
/// Nothing where they cannot keep off the quilt's centre line.
struct ColumnJoins {
    std::vector<Length> at;
    bool handFirst = true;
};
std::optional<ColumnJoins> joinsOf(const Problem& problem, const Column& column, Length height);

} // namespace bastewright::backing
