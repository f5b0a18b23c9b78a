#pragma once

#include "checker/report.h"
#include "checker/view.h"

#include <span>
#include <string_view>
#include <variant>

namespace bastewright::check {

using QuiltRule = void (*)(const QuiltView&, Report&);
using PlanRule = void (*)(const PlanView&, Report&);

struct Rule {
    /// A rule that asks for something to be there is not asked of a quilt for which the plan itself
    /// says that there is no good plan; a rule about what is there always is.
    enum class Asks { always, unlessStopped };
    std::string_view name; ///< stable, "part.rule"
    std::variant<QuiltRule, PlanRule> check;
    Asks asks = Asks::always;
};

/// All rules, in the order of their findings.
std::span<const Rule> rules();

/// Asks a rule of a plan; so many violations are written out.
void ask(const Rule& rule, const PlanView& view, Findings& out, int shown = Report::kShown);

} // namespace bastewright::check
