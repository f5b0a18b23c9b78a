#pragma once

#include "job/job.h"
#include "plan/plan.h"
#include "planners/batting/pack_size.h"

#include <optional>
#include <vector>

namespace bastewright::batting {

/// Common practice: a narrower strip pulls apart where it is joined.
inline constexpr Length kLeastShown = Length::inches(6);

/// A way to make the batting of what is bought.
struct NewBatting {
    BattingPlan plan;        ///< what is bought, cut and joined, and what is said of it
    double area = 0;         ///< of what is bought, square inches
    int alongSeams = 0;      ///< joins within 2 in along a seam of the backing
    bool pieceStrip = false; ///< its last strip lies turned, in one piece or several
};

/// What new batting may be had of. Same kind only: packs are joined to packs, lengths to lengths
/// off the same roll.
struct Offered {
    std::vector<PackSize> packs;
    std::vector<Length> rolls;
};

/// Every way worth comparing, each of what is offered: one pack; two of one size joined (trimmed on
/// every edge), where no pack holds; and of every roll, along or across the quilt, one length, or
/// as few lengths side by side as are wide enough, or one fewer with a strip turned a quarter that
/// is pieced where it has to be. Joins keep 2 in off `seams` that run along them where they can.
std::vector<NewBatting> newBatting(const Batting& rules, const Offered& offered, Size needed,
                                   Unit unit, const std::vector<Segment>& seams);

/// True where a is to be taken before b: fewest joins, then off the backing's seams, then shortest
/// joins, then a single pack before a roll, then the least bought. With `savings` the least bought
/// comes first.
bool takenBefore(const NewBatting& a, const NewBatting& b, bool savings);

/// "1 join takes 3 1/2 yd of joining strip and about 20 min." Empty for none.
Sentence joinCost(const BattingPlan& plan, Unit unit);

} // namespace bastewright::batting
