#include "session/new_plan_json.h"

#include "job/job_json.h"
#include "job/json_text.h"
#include "plan/plan_json.h"

namespace bastewright {

std::string writeNewPlan(const Session& session, const Plan& plan) {
    const Json both{{"session", writeSession(session)}, {"plan", writePlan(plan)}};
    return both.dump(-1, ' ', false, Json::error_handler_t::replace);
}

NewPlanText newPlanText(std::string_view text) {
    // A plan that stands alone passes one of these limits and is left to its own reader.
    constexpr JsonLimits kWithin{.bytes = 100'000'000, .values = 10, .depth = 2, .fields = 4};
    Findings problems;
    const auto both = parseJson(text, kWithin, problems);
    const auto isText = [&](const char* key) {
        return both->contains(key) && both->at(key).is_string();
    };
    if (problems.empty() && both && both->is_object() && isText("session") && isText("plan"))
        return {both->at("plan").get<std::string>(), both->at("session").get<std::string>()};
    return {std::string{text}, {}};
}

} // namespace bastewright
