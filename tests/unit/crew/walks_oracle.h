#pragma once

#include "planners/crew/crew.h"

#include <string>
#include <vector>

/// Who stands and walks where, judged from the plan alone and not by the planner's code.
namespace bastewright::made {

/// Inches walked by everybody from zone to zone, and the least it could be for their stretches.
struct Walk {
    std::string person;
    double inches = 0, least = 0;
};
std::vector<Walk> walks(const Session& session, const std::vector<QuiltPlan>& quilts,
                        const CrewPlan& plan);

/// One sentence for every list of a helper that has more than three lines in a pass besides team
/// steps.
std::vector<std::string> longLists(const CrewPlan& plan);

/// One sentence for every stretch that is in several pieces with others between them, for every
/// walk of more than 1.2 times the least (and a step), and for everybody who works for longer than
/// two hours without a break though breaks are proposed.
std::vector<std::string> brokenWalks(const Session& session, const std::vector<QuiltPlan>& quilts,
                                     const CrewPlan& plan);

} // namespace bastewright::made
