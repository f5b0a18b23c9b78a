#include "session/checked_plan.h"

#include "checker/checker.h"
#include "checker/underway.h"
#include "session/pins.h"
#include "session/private/rest_plan.h"

namespace bastewright {

Plan checkedPlan(const Session& session, const WholeOptions& options, std::stop_token stop) {
    Plan plan = planWhole(session, options, stop);
    for (Finding& f : checkPlan(session, plan)) {
        if (f.cure.empty())
            f.cure = core::says(
                "This is a fault of the program, not yours: change a size or the spacing a little "
                "and plan again, and report it with the file of the quilt.");
        f.field.clear(); // it leads into the plan's file, those of a plan into the session's
        plan.findings.push_back(std::move(f));
    }
    return plan;
}

Findings faultsOfRest(const Session& session, const Plan& plan, const Plan& before,
                      const LiveState& state, Seconds now) {
    Underway facts{.before = &before,
                   .now = now,
                   .done = state.doneTasks,
                   .setAside = state.setAside,
                   .present = state.present,
                   .pins = countPins(before, session, state).left};
    facts.begun = begunZones(session, before, state);
    return checkRest(session, plan, facts);
}

bool isGood(const Plan& plan) {
    return !anyStop(plan.findings);
}

} // namespace bastewright
