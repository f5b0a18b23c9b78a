#pragma once

#include "job/finding.h"
#include "job/job.h"
#include "planners/crew/search.h"

namespace bastewright::crew {

/// Where hours are too short and somebody stays beyond theirs: the schedule that keeps people
/// least, trying for each of those who leave what their staying alone would do.
Schedule leastOvertime(const Problem& problem, Schedule schedule, const SearchOptions& options,
                       std::stop_token stop = {});

/// The stop that says whose hours are too short by how much, and until when they would have to
/// stay; nothing where nobody's are.
void sayOvertime(const Problem& problem, const Schedule& schedule,
                 const std::vector<Helper>& helpers, ClockTime start, Findings& findings);

/// The problem as it is where everybody who stays beyond their hours stays as long as it takes.
Problem withOpenEnd(Problem problem);

} // namespace bastewright::crew
