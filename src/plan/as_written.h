#pragma once

#include "plan/plan.h"

#include <string_view>

namespace bastewright {

/// What a plan's file says that its plan, written again, does not, and the other way round: a field
/// that only people read was changed by hand, a text is not the one that its sentence makes, one is
/// left out. Warnings whose field is the JSON pointer; at most ten, the rest are counted. Nothing
/// for what writePlan wrote.
Findings unlikeWritten(std::string_view file, const Plan& plan);

} // namespace bastewright
