#pragma once

#include "job/job.h"

namespace bastewright {

/// Spacings that are accepted of a way of basting, and the usual one: of pins, dots and rows of
/// thread 1 to 12 in, usually 4; of bands of spray 10 to 18 in, usually 18. Common practice.
struct Spacings {
    Length least, usual, most;
};
Spacings spacingsOf(Basting::With with);

/// The same, basted so; at the usual spacing, measured by no hand, where that differs.
Basting bastedWith(Basting basting, Basting::With with);

} // namespace bastewright
