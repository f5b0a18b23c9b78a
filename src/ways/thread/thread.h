#pragma once

#include "ways/way.h"

namespace bastewright::ways {

/// Thread: rows of long running stitches through all three layers, sewn from the middle outward and
/// drawn out again once the quilt is quilted.
Way thread();

} // namespace bastewright::ways
