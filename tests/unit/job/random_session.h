#pragma once

#include "job/job.h"

#include <cstdint>

namespace bastewright {

/// A session that readSession accepts, with every field somewhere off its default.
Session randomSession(std::uint64_t seed);

} // namespace bastewright
