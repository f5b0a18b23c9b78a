#include "checker/checker.h"

#include "checker/rest/rest_view.h"
#include "checker/rule.h"

#include <algorithm>

namespace bastewright {

void check::ask(const Rule& rule, const PlanView& view, Findings& out, int shown) {
    const bool excused = rule.asks == Rule::Asks::unlessStopped;
    Report report{rule.name, out, shown};
    if (const auto* ofPlan = std::get_if<PlanRule>(&rule.check)) {
        if (!(excused && view.stopped()))
            (*ofPlan)(view, report);
    } else {
        for (const QuiltView& quilt : view.quilts)
            if (!(excused && quilt.stopped()))
                std::get<QuiltRule>(rule.check)(quilt, report);
    }
    report.close();
}

Findings checkPlan(const Session& session, const Plan& plan) {
    if (session.setting.helpers.empty()) { // nobody is named: it is for one, with what is usual
        Session forOne = session;
        forOne.setting.helpers.emplace_back().name = "Helper 1";
        return checkPlan(forOne, plan);
    }
    const check::PlanView view{session, plan};
    Findings out;
    for (const check::Rule& rule : check::rules())
        check::ask(rule, view, out);
    return out;
}

std::string_view ruleInWords(std::string_view rule) {
    const auto wordsIn = [&](const auto& rules) {
        const auto at = std::ranges::find_if(rules, [&](const auto& r) { return r.name == rule; });
        return at == rules.end() ? std::string_view{} : at->inWords;
    };
    const std::string_view words = wordsIn(check::rules());
    return words.empty() ? wordsIn(check::rulesOfRest()) : words;
}

} // namespace bastewright
