#pragma once

#include "ways/way.h"

namespace bastewright::ways {

/// Fuse dots: squares of fusible web at both faces of the batting, pressed with an iron.
Way dots();

} // namespace bastewright::ways
