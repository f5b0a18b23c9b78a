#pragma once

#include "job/job.h"
#include "planners/passes/cover.h"

namespace bastewright {

/// What a layout of passes depends on.
class LayoutMemory;

struct LayoutInput {
    const Board& board;
    const Lie& lie;
    Basting::Start start = Basting::Start::besideMiddle; ///< not `best`
    Length row;             ///< the middle lies so far inside the first field for a start beside it
    bool search = true;     ///< false: grids and bricks only
    bool briefly = false;   ///< looks for sets of windows for a few steps only
    std::stop_token stop{}; ///< ends the search with what was found
};

/// Passes in working order, the fewest that were found and of those the cheapest, and how few it
/// would take at least.
struct Layout {
    Sequence sequence;
    std::size_t least = 1;
    std::vector<Sequence> others{}; ///< as few passes, the next cheapest, a handful at most
};

/// No arrangement of fields does with fewer passes: points of which no two lie on the table, with a
/// row pulled in, at once.
std::size_t leastPasses(const Board& board, const Lie& lie);

/// The passes from the middle or beside it: grids and bricks, and where these take no more than
/// ten, the exact search for sets of windows (see fewestCover). From one end: rows of passes one
/// after another from one end of the quilt, each from its own. Nothing where the table is too
/// small, or more than kMostPasses are needed.
std::optional<Layout> layOut(const LayoutInput& in);

/// What the first pass has to keep where a layout is changed.
FirstPass keptFirst(const LayoutInput& in);

/// The same passes with boundaries moved so that they are as even as may be and the quilt is moved
/// little; never more of them.
Sequence evened(const LayoutInput& in, const Sequence& sequence);

/// Sequences of tables that are smaller by 2 and by 6 in, either way, on this one, with the table
/// where the smaller one lay, the rest of it on either side or half on both, or as it lies for
/// these fields otherwise: more table is no less. `memory` may be null; `cost` places the smaller
/// table, too.
std::vector<Sequence> ofSmaller(const LayoutInput& in, LayoutMemory* memory, const StepCost& cost);

/// The same passes with the table where each costs least; nothing where that is no other sequence
/// or does not work.
std::optional<Sequence> placedFor(const LayoutInput& in, const Sequence& sequence,
                                  const StepCost& cost);

} // namespace bastewright
