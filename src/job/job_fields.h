#pragma once

#include "job/field_reader.h"
#include "job/field_writer.h"

/// The fields of a quilt and of its setting in files. Private to the job and session formats.
namespace bastewright {

/// Reads every field of a quilt, its unit first; the reader keeps that unit.
void readJob(FieldReader& reader, Job& job);
void writeJob(FieldWriter& writer, const Job& job);

/// Reads room, people, hour and boxes, with numbers in the reader's unit.
void readSetting(FieldReader& reader, Setting& setting);
void writeSetting(FieldWriter& writer, const Setting& setting);

/// What the parts of a top say about each other: readings that spread, a grid that does not fit,
/// seams beyond the edge. Fills missing readings from the grid's nominal size.
void checkTop(FieldReader& reader, Top& top);

/// What the diagonals of a leftover say: none or both, near what its sides make.
void checkPiece(FieldReader& reader, const BattingPiece& piece);

} // namespace bastewright
