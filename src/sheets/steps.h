#pragma once

#include "plan/plan.h"

#include <QString>

#include <string>
#include <vector>

namespace bastewright::sheets {

/// A line of the lead's list of steps: one task of a whole pass, or all zones somebody does of one
/// kind without anything else in between.
struct Step {
    TaskKind kind = TaskKind::placeOpen;
    Seconds start{}, end{};
    std::vector<std::string> people;
    std::vector<std::string> zones; ///< in the order they are done; empty for tasks of a whole pass
    std::vector<StandingPlace> places;
    int points = 0;
};

/// The steps of a pass in order of their beginning. Every task of the pass is in exactly one of
/// them.
std::vector<Step> stepsOf(const Plan& plan, std::size_t quilt, int pass);

/// "C4, C5, D2: place 24 pins, open", or the task's own line.
QString stepLine(const Step& step, const QuiltPlan& quilt, int pass, Basting::With with, Unit unit);

} // namespace bastewright::sheets
