#pragma once

#include "planners/crew/pass_work.h"

/// What no plan by the same rules beats (docs/computation/crew.md, "Bound").
namespace bastewright::crew {

/// No plan of these passes, from the same places and by the same calls and times, ends before this.
Seconds earliestFinish(const Given& given, std::vector<QuiltTable>& tables,
                       const std::vector<Block>& blocks, const std::vector<PassPlan>& passes);

/// For passes at several tables, seconds from the session's start: no sharing of tables and people
/// among them ends sooner; `hands` with the hours they keep. Nobody, and no table, works on for
/// more than `restAfter` seconds without a break (0: as long as there is work).
int earliestOfSeveral(const Given& given, const std::vector<Hand>& hands,
                      const std::vector<QuiltTable>& tables, const std::vector<Block>& blocks,
                      const std::vector<PassPlan>& passes, int restAfter);

} // namespace bastewright::crew
