#pragma once

#include "ways/way.h"

namespace bastewright::ways {

/// Spray: adhesive from a can at both faces of the batting, half of a pass folded back at a time,
/// band by band from the fold outward, every band smoothed down before the next.
Way spray();

} // namespace bastewright::ways
