#pragma once

#include "plan/plan.h"

namespace bastewright {

/// Proves that batting and backing are large enough for the top, each centred under it: the spare
/// on every side is half of what the layer is larger. A layer smaller than the top is a stop; spare
/// below half of the overage that was asked for (per side, never in total) is a warning. Each
/// finding names the measured sizes and the smallest change that cures it. Empty where all is well.
Findings proveSizes(const Job& job, const LayerSizes& layers);

} // namespace bastewright
