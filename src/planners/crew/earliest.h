#pragma once

#include "planners/crew/blocks.h"

/// What no plan by the same rules beats (docs/computation/crew.md, "Bound").
namespace bastewright::crew {

/// No plan of these passes, from the same places and by the same calls and times, ends before this.
Seconds earliestFinish(const Given& given, std::vector<QuiltTable>& tables,
                       const std::vector<Block>& blocks, const std::vector<PassPlan>& passes);

/// How a pass's time goes with how many are at its table, people counted in the quickest one's
/// pace: steps of a few, which do not go with it, and the calls that do.
struct PassWork {
    double fixed = 0;  ///< seconds at the quickest one's pace
    double shared = 0; ///< hands' work of the pass, seconds at the quickest one's pace
    int settles = 0;   ///< calls at which everybody steps up to a zone
    /// The least it takes with so many (1 or more, not always whole).
    double least(double people) const;
};

PassWork passWork(const Given& given, const QuiltTable& table, int job, std::size_t pass,
                  double quickest);

/// For passes at several tables, seconds from now: no sharing of tables and people among them ends
/// sooner. Proven by prices: whatever a second of a table and of a person is said to be worth, the
/// passes cost at least so much, and there is no more of both. `counts`: how many at each pass's
/// table is cheapest at the prices that prove most, people counted in the quickest one's pace.
int earliestOfSeveral(const Given& given, const std::vector<QuiltTable>& tables,
                      const std::vector<Block>& blocks, std::vector<double>* counts = nullptr);

} // namespace bastewright::crew
