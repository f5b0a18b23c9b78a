#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <string_view>

namespace bastewright {

/// What a `replanned` event carries: a plan as it is in files, or an object of two texts, `plan`
/// and `session`, where the session in force changes with it.
struct NewPlanText {
    std::string plan;
    std::optional<std::string> session;
};
std::string writeNewPlan(const Session& session, const Plan& plan);
NewPlanText newPlanText(std::string_view text);

} // namespace bastewright
