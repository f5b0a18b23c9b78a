#pragma once

#include "checker/report.h"
#include "checker/view.h"

#include <span>
#include <string_view>
#include <variant>

namespace bastewright::check {

using QuiltRule = void (*)(const QuiltView&, Report&);
using PlanRule = void (*)(const PlanView&, Report&);

/// How a rule of first plans is asked of a plan that takes over.
enum class AskedOf {
    whole,     ///< of the plan, what is done too
    sameRows,  ///< of the plan, where its points are told of as in the plan in force
    newPasses, ///< of the passes of which nothing is done
    open,      ///< of the tasks that are not done
    /// The same: those of passes that are begun on the surface they lie on, the others on the new.
    openInPlace,
    notBegun, ///< of those that cannot be in hand
    notBegunInPlace,
    same, ///< of the first plan: what it is about must be as it was
    first ///< of the first plan only; a rule of the rest takes its place
};
struct Rule {
    /// A rule that asks for something to be there is not asked of a quilt for which the plan itself
    /// says that there is no good plan; a rule about what is there always is.
    enum class Asks { always, unlessStopped };

    constexpr Rule(std::string_view stableName, std::string_view holds,
                   std::variant<QuiltRule, PlanRule> checks, AskedOf askedOf,
                   Asks whether = Asks::always)
        : name{stableName}
        , inWords{holds}
        , check{checks}
        , of{askedOf}
        , asks{whether} {}

    std::string_view name;    ///< stable, "part.rule"
    std::string_view inWords; ///< what must hold, for people: no sentence of its own
    std::variant<QuiltRule, PlanRule> check;
    AskedOf of;
    Asks asks;
};

/// All rules, in the order of their findings.
std::span<const Rule> rules();

/// Asks a rule of a plan; so many violations are written out.
void ask(const Rule& rule, const PlanView& view, Findings& out, int shown = Report::kShown);

} // namespace bastewright::check
