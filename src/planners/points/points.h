#pragma once

#include "plan/plan.h"
#include "planners/points/points_memory.h"

#include <stop_token>

namespace bastewright {

struct PointsOptions {
    int effort = 1; ///< scales the iterations of every search; 0: only the first complete plan
    std::optional<Basting::Layout> layout{}; ///< in place of what the job asks for
    /// Which way rows are to run; nothing: whichever needs fewer points, along the width of two
    /// alike.
    std::optional<PinRows::Along> along{};
    bool glance = false;            ///< of `Layout::fewest` a fifth of the search: how few about
    PointsMemory* memory = nullptr; ///< makes later plans quicker, never different
};

struct PointsPlan {
    std::vector<PlacedPoint> points; ///< over the whole top, by y then x
    std::optional<PinRows> rows;     ///< where they stand in rows
    std::optional<PinBlocks> blocks; ///< where they go by the blocks
    int bound = 0;     ///< Kershner (1939): ceil(area / (r²·3√3/2)), r = spacing/√2
    Findings findings; ///< where clearance was relaxed, and why
};

/// Where every pin or dot of one quilt goes: every place of the top within r =
/// spacing/√2 of a point's centre (+ 1/8 in at most), no two centres closer
/// than spacing/2; pins at least `edge` inside the top and their whole length
/// at least `clear` from every sewn seam; in rows, by the blocks, or as few as
/// can be found.
/// Pure and deterministic.
PointsPlan planPoints(const Job& job, const PointsOptions& options = {}, std::stop_token stop = {});

/// Kershner's lower bound for covering so many square inches at a spacing.
int leastPoints(double squareInches, Length spacing);

} // namespace bastewright
