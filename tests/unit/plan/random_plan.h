#pragma once

#include "plan/plan.h"

#include <cstdint>

namespace bastewright {

/// A plan with every field somewhere off its default; not one that makes sense.
Plan randomPlan(std::uint64_t seed);

} // namespace bastewright
