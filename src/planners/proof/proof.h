#pragma once

#include "plan/plan.h"

namespace bastewright {

/// Common practice: layers that are more than this short where they are compared before a shift
/// have a pleat underneath; up to it they creep while they are basted.
inline constexpr Length kCreep = Length::inch64ths(32);

/// What a layer has past the top on each of two facing sides, and what comes of it.
struct SpareLeft {
    Length overage;  ///< as the layer lies there
    Length squaring; ///< taken by a top that leans, once it is laid straight
    Length left() const { return overage - squaring - kCreep; }
};
struct LayerSpare {
    SpareLeft sides, ends; ///< at left and right, at head and foot
};
LayerSpare spareOf(const Top& top, Size layer);

/// Proves that batting and backing are large enough for the top, each centred under it: the spare
/// on every side, the same in every pass, is half of what the layer is larger than the top takes up
/// (its largest readings; more where its diagonals say that it leans). A backing that was measured
/// before it was washed counts as what washing leaves. A layer smaller than the top is a stop;
/// spare below half of the overage that was asked for (per side, never in total) is a warning. Each
/// finding names the sizes and the smallest change that cures it, of the layer as it was measured.
/// Empty where all is well.
Findings proveSizes(const Job& job, const LayerSizes& layers);

} // namespace bastewright
