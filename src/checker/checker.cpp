#include "checker/checker.h"

#include "checker/rule.h"

namespace bastewright {

Findings checkPlan(const Session& session, const Plan& plan) {
    if (session.setting.helpers.empty()) { // nobody is named: it is for one, with what is usual
        Session forOne = session;
        forOne.setting.helpers.emplace_back().name = "Helper 1";
        return checkPlan(forOne, plan);
    }
    const check::PlanView view{session, plan};
    Findings out;
    for (const check::Rule& rule : check::rules()) {
        const bool excused = rule.asks == check::Rule::Asks::unlessStopped;
        check::Report report{rule.name, out};
        if (const auto* ofPlan = std::get_if<check::PlanRule>(&rule.check)) {
            if (!(excused && view.stopped()))
                (*ofPlan)(view, report);
        } else {
            for (const check::QuiltView& quilt : view.quilts)
                if (!(excused && quilt.stopped()))
                    std::get<check::QuiltRule>(rule.check)(quilt, report);
        }
        report.close();
    }
    return out;
}

} // namespace bastewright
