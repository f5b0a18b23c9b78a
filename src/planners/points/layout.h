#pragma once

#include "planners/points/rules.h"

#include <stop_token>

namespace bastewright::points {

/// Points on the whole top while they are put together.
struct Layout {
    struct Pin {
        Spot at;
        bool loose = false; ///< may be moved or taken away by a repair
    };
    std::vector<Pin> pins;

    Spots spots() const;
};

/// Covers what is still uncovered, place by place: the points that are not loose stay, loose ones
/// near a hole may move or go. Afterwards the whole top is covered; where no other way is found, by
/// a point nearer to another than the gap. False where nothing was open.
/// After a stop it is left as it is: for layouts that are not needed.
bool repair(Layout& layout, const Rules& rules, int steps, std::stop_token stop = {});

/// The same for a layout that may leave much of the top open: one search over the whole top.
void fill(Layout& layout, const Rules& rules, int steps);

/// Takes away loose points that are not needed, and of the others those that another had to be set
/// nearer to than the gap.
void prune(Layout& layout, const Rules& rules);

/// Sorted by y, then x, once each.
void tidy(Layout& layout);

} // namespace bastewright::points
