#pragma once

#include "job/job_json.h"
#include "plan/plan.h"

#include <string>
#include <string_view>

namespace bastewright {

/// Writes `bastewright-plan`, version 1 (docs/formats.md), lengths in the plan's unit. A plan of
/// one quilt has that quilt's fields at the top; a plan of several has them under "quilts".
std::string writePlan(const Plan& plan);

/// The largest plan file that is read.
inline constexpr std::size_t kMostPlanBytes = 32'000'000;

struct PlanRead {
    std::optional<Plan> plan; ///< nothing where `problems` holds a stop
    Findings problems;
};

/// Reads what writePlan writes. Fields a checker needs must be there; others default. Never throws.
PlanRead readPlan(std::string_view text);

} // namespace bastewright
