#pragma once

#include "job/fields/field_reader.h"

/// What the parts of a quilt say about each other. Private to this folder.
namespace bastewright {

/// Fills missing readings from the grid's nominal size. False where the fields cannot be compared
/// with each other: some were refused, or a reading is missing, which it says.
bool fillTop(FieldReader& reader, Top& top);

/// Readings that spread, a grid that does not fit, seams beyond the edge. Each field must have been
/// accepted by itself.
void checkTop(FieldReports& reports, const Top& top);

/// What the diagonals of a leftover say: near what its sides make.
void checkPiece(FieldReports& reports, const BattingPiece& piece);

} // namespace bastewright
