#pragma once

#include "ways/way.h"

namespace bastewright::ways {

/// Safety pins: put in open, the pass smoothed, then closed.
Way pins();

} // namespace bastewright::ways
