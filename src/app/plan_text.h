#pragma once

#include "plan/plan.h"

#include <string>

namespace bastewright::app {

/// A plan as plain text that a person can read in a terminal.
std::string planText(const Session& session, const Plan& plan);

/// One finding on a line or two: level, field, sentence, cure.
std::string findingText(const Finding& finding);

} // namespace bastewright::app
