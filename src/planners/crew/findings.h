#pragma once

#include "planners/crew/pass_day.h"

namespace bastewright::crew {

/// Says who is there where that is worth a word; names a helper where nobody is named.
void sayWhoIsThere(std::vector<Helper>& helpers, Findings& findings);

/// What a plan of everybody's work leaves to be said: zones nobody reaches, closes or presses, too
/// few who lift, nobody who looks underneath, hours too short, wishes that are not kept.
struct CrewFacts {
    const Given& given;
    const std::vector<Helper>& helpers;
    const std::vector<std::vector<PassCrew>>& crews; ///< by quilt and pass
    const std::vector<PassPlan>& passes;
};
void sayFindings(const CrewFacts& facts, std::span<const Task> tasks, Findings& findings);

} // namespace bastewright::crew
