#pragma once

#include "plan/plan.h"

namespace bastewright {

/// Proves that batting and backing are large enough for the top, each centred under it: the spare
/// on every side, the same in every pass, is half of what the layer is larger than the top takes up
/// (its largest readings; more where its diagonals say that it leans). A backing that was measured
/// before it was washed counts as what washing leaves. A layer smaller than the top is a stop;
/// spare below half of the overage that was asked for (per side, never in total) is a warning. Each
/// finding names the sizes and the smallest change that cures it, of the layer as it was measured.
/// Empty where all is well.
Findings proveSizes(const Job& job, const LayerSizes& layers);

} // namespace bastewright
