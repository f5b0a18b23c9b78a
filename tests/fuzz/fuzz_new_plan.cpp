#include "fuzz/promise.h"
#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/new_plan_json.h"

using namespace bastewright;
using namespace bastewright::fuzz;

/// The text of an event that changes the plan.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto text = textOf(data, size);
    const auto parts = newPlanText(text);
    promise(parts.plan.size() <= size && (!parts.session || parts.session->size() <= size),
            "taking apart makes nothing longer");
    if (!parts.session)
        promise(parts.plan == text, "what is no pair is a plan as it stands");
    const auto plan = readPlan(parts.plan);
    promiseSentences(plan.problems);
    if (!parts.session || !plan.plan)
        return 0;
    const auto session = readSession(*parts.session);
    promiseSentences(session.problems);
    if (!session.session)
        return 0;
    const auto again = newPlanText(writeNewPlan(*session.session, *plan.plan));
    promise(again.plan == writePlan(*plan.plan), "the plan is carried unchanged", again.plan);
    promise(again.session == writeSession(*session.session), "the session is carried unchanged",
            *again.session);
    return 0;
}
