#pragma once

#include "plan/plan.h"

#include <string>

namespace bastewright::app {

/// What matters of a plan, on one screen of 80 columns: passes, finish, what to bring, what to
/// check first. Many passes, and several quilts, are a line each.
std::string planSummary(const Session& session, const Plan& plan);

/// All of a plan as plain text that a person can read in a terminal.
std::string planText(const Session& session, const Plan& plan);

/// One finding on a line or two: level, field, sentence, cure.
std::string findingText(const Finding& finding);

/// How many of a supply, as they are said at the shop: "12 3/8" of yards, "544" of pins.
std::string supplyFigure(const Supply& supply, double number, Unit unit);

} // namespace bastewright::app
