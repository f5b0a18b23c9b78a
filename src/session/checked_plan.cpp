#include "session/checked_plan.h"

#include "checker/checker.h"

namespace bastewright {

Plan checkedPlan(const Session& session, const WholeOptions& options, std::stop_token stop) {
    Plan plan = planWhole(session, options, stop);
    for (Finding& f : checkPlan(session, plan)) {
        if (f.cure.empty())
            f.cure = core::says(
                "This is a fault of the program, not yours: change a size or the spacing a little "
                "and plan again, and report it with the file of the quilt.");
        plan.findings.push_back(std::move(f));
    }
    return plan;
}

bool isGood(const Plan& plan) {
    return !anyStop(plan.findings);
}

} // namespace bastewright
