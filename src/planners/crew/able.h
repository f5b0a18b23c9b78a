#pragma once

#include "planners/passes/reach.h"

/// Who can do what (docs/computation/crew.md, "Tasks", "Places", "Findings").
namespace bastewright::crew {

/// What a person must be able to do to take part.
struct Needs {
    bool lifts = false, irons = false, closes = false, reach = false;
    bool afoot = false; ///< walks round the table: not for seated people where others can do it
    auto operator<=>(const Needs&) const = default;
};

/// True where a helper may take part in a task, reach aside.
bool may(const Helper& helper, const Needs& needs);

/// True where one of those who may also reaches the whole zone while its quilt lies as in `pass`.
bool anyReach(const std::vector<Helper>& helpers, const QuiltPlan& quilt, const Pass& pass,
              const Zone& zone, const Needs& needs);

/// Which zones of a quilt can be worked, by index. What cannot is said pass by pass, with what
/// would cure it.
std::vector<bool> workableZones(const std::vector<Helper>& helpers, const QuiltPlan& quilt,
                                bool dots, Unit unit, Findings& findings);

} // namespace bastewright::crew
