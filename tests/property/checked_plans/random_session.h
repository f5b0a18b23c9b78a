#pragma once

#include "job/job.h"

#include <cstdint>

namespace bastewright::testing {

/// A session such as people might bring: quilts from crib size to 120 × 120 in with dense, few or
/// no seams, one to three of them; tables of 3 to 14 ft or the floor, walls; one to eight helpers
/// of uneven reach, pace, hours and skill; pins or dots; full or empty boxes. The same for the same
/// seed on every machine, and always one that readSession accepts.
Session randomSession(std::uint64_t seed);

} // namespace bastewright::testing
