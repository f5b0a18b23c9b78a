#pragma once

#include "job/job.h"

#include <vector>

namespace bastewright::backing {

/// One continuous length of cloth as it is cut: washed, squared at its end, selvages off.
struct Bolt {
    int fabric = 0; ///< index into Backing::fabrics
    bool bought = false;
    Length width;
    Length length; ///< what may be cut from it; meaningless for a bought one, which is as long as
                   ///< asked
};

/// Every on-hand length and every cloth that may be bought, on-hand ones first.
std::vector<Bolt> boltsOf(const Backing& rules);

/// What is left of a length once washed, rounded down.
Length washed(Length asBought, double shrinkPercent);

/// What has to be bought so that `cut` can be cut after washing and squaring: rounded up to 1/8 yd
/// in inch jobs, 5 cm in metric ones. Zero for nothing.
Length toBuy(Length cut, const Backing& rules, Unit unit);

/// Cloth that n panels of one height take from one bolt. Where a print must match, each panel
/// starts a whole number of repeats after the one before (never more than one repeat an extra
/// panel).
Length clothFor(int panels, Length height, Length repeat);

/// Where the i-th of them starts.
Length panelStart(int i, Length height, Length repeat);

/// Most panels of one height a bolt of this length gives.
int panelsFrom(Length bolt, Length height, Length repeat);

/// Price of a bought length: per yard in inch jobs, per metre in metric ones.
double priceOf(Length bought, double price, Unit unit);

} // namespace bastewright::backing
