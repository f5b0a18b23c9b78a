#pragma once

#include "job/job.h"

#include <vector>

namespace bastewright::backing {

/// One continuous length of cloth as it is cut: washed, selvages off.
struct Bolt {
    int fabric = 0; ///< index into Backing::fabrics
    bool bought = false;
    Length width;
    Length length; ///< as washed; meaningless for a bought one, which is as long as asked
};

/// Every on-hand length and every cloth that may be bought, on-hand ones first.
std::vector<Bolt> boltsOf(const Backing& rules);

/// What is left of a length once washed, rounded down.
Length washed(Length asBought, double shrinkPercent);

/// What has to be bought so that `cut` can be cut after washing: rounded up to 1/8 yd in inch jobs,
/// 5 cm in metric ones. Zero for nothing.
Length toBuy(Length cut, const Backing& rules, Unit unit);

/// Cloth that n lengths of one height take from one bolt, each with what squaring its end loses.
/// Where a print must match, each starts a whole number of repeats after the one before (never more
/// than one repeat an extra length).
Length clothFor(int lengths, Length height, const Backing& rules);

/// Where the i-th of them starts, squared.
Length lengthStart(int i, Length height, const Backing& rules);

/// Most lengths of one height a bolt of this length gives.
int lengthsFrom(Length bolt, Length height, const Backing& rules);

/// Price of a bought length: per yard in inch jobs, per metre in metric ones.
double priceOf(Length bought, double price, Unit unit);

} // namespace bastewright::backing
