#pragma once

#include "job/job.h"
#include "measures/sentence.h"
#include "plan/pin_blocks.h"
#include "plan/pin_rows.h"
#include "plan/zone.h"

#include <optional>
#include <span>

/// How the points of a quilt are placed, as one person says it to another.
namespace bastewright {

/// Rows and steps: 'Rows 4 1/4 in apart across the quilt, a pin about every 4 3/4 in, every second
/// row half a step over'. Whoever has the ribbons as well needs nothing else but the sentences
/// below.
Sentence rowsSentence(const PinRows& rows, const Job& job);

/// What to do at a seam, which pins stand in no row, how exact to be; only what there is to say. At
/// a mark that is too near a seam the pin goes to the nearest place, in eighths of an inch
/// (quarters of a centimetre) from the head-left corner, where it is clear; of several the one
/// further left, then the one nearer to the head. Marks are taken row by row from the head-left
/// corner; one whose pin would come nearer than half the spacing to another is left out.
Sentences rowsDetails(const PinRows& rows, const Job& job);

/// What a zone has of the rows, to stand behind its name: 'rows 1–8 as far as mark 11, rows 9–13 as
/// far as mark 10, 2 single pins'. Marks count from the left (or from the head), as on the ribbons.
/// Empty for a zone without points.
Sentence zoneRowsWords(const Zone& zone, const PinRows& rows, const Job& job);

/// How many points the zones have, by how they are basted, the quilt's own way first: '412 pins and
/// 96 dots'. Of one pass, or of all where none is named.
Sentence countsSentence(const Job& job, std::span<const Zone> zones, std::optional<int> pass = {});

/// The figure of a block: 'Nine in every block, three by three; one in every sashing strip'.
Sentence blocksSentence(const PinBlocks& blocks, const Job& job);
/// Lines along the sides, left-out and single pins; only what there is to say.
Sentences blocksDetails(const PinBlocks& blocks, const Job& job);

} // namespace bastewright
