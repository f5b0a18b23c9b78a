#include "session/new_plan_json.h"

#include "job/job_json.h"
#include "plan/plan_json.h"

#include <nlohmann/json.hpp>

namespace bastewright {

using nlohmann::json;

std::string writeNewPlan(const Session& session, const Plan& plan) {
    const json both{{"session", writeSession(session)}, {"plan", writePlan(plan)}};
    return both.dump(-1, ' ', false, json::error_handler_t::replace);
}

NewPlanText newPlanText(std::string_view text) {
    const json both = json::parse(text, nullptr, false);
    if (both.is_object() && both.contains("session") && both["session"].is_string() &&
        both.contains("plan") && both["plan"].is_string())
        return {both["plan"].get<std::string>(), both["session"].get<std::string>()};
    return {std::string{text}, {}};
}

} // namespace bastewright
