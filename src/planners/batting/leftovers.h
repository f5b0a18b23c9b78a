#pragma once

#include "planners/batting/join_layout.h"

#include <string>
#include <vector>

namespace bastewright::batting {

/// A piece of batting that may be joined: a leftover, or a part of one that is split first.
struct Blank {
    std::string name;
    Size listed; ///< of the leftover, as the person measured it
    Rect usable; ///< inside the trimmed edges, on the leftover once cut square
    bool part = false;
};

/// What is joined, and how much a join and a raw edge cost.
struct Pool {
    std::vector<Blank> blanks; ///< largest first
    Size needed;
    Length overlap, trim;
    bool mayTurn = false;
};

/// The job's pieces one by one, trimmed. Pieces that trimming and one overlap use up are left out
/// with a finding, and so are all but the `most` largest.
Pool poolOf(const Batting& batting, Size needed, Unit unit, std::size_t most, Findings& findings);

/// The pool as a problem without overlaps: every piece and the target less one overlap a direction.
JoinProblem problemOf(const Pool& pool);

/// Pieces, joins, strip and what is left over.
BattingPlan planOf(const Pool& pool, const JoinLayout& layout, Unit unit);

} // namespace bastewright::batting
