#pragma once

#include "plan/plan.h"

#include <map>
#include <vector>

namespace bastewright {

/// Pins or dots to bring for so many: a tenth more than counted, rounded up. Common practice.
std::int64_t withSpare(std::int64_t count);

/// Clips by the roll they hold.
using Clips = std::map<Length, std::int64_t>;

/// The most clips that are on at any one time. The quilts of a surface lie on it one after another,
/// and what is rolled for the machine keeps its clips; surfaces work at the same time. Folded parts
/// take none; a roll that no clip on hand holds takes the least size in half inches that would.
Clips clipsAtOnce(const std::vector<QuiltPlan>& quilts);

/// Everything to bring: need, have and buy, in the order of the work (docs/computation/bring.md).
///
/// `quilts` are the plans of `session.jobs`, in order; fields that a quilt has no plan for add
/// nothing. Counts are whole. Lengths are in whole units of the first quilt (`in`, `cm` or `mm`),
/// need rounded up and have rounded down; cloth is in yards or metres to a thousandth. buy = max(0,
/// need - have). Items that are neither needed nor counted out are left out.
///
/// What a row is stands in its `kind` and `size`, how it is called in `item`; the lengths of pins
/// are in `unit`. What fabric and batting are to be bought has a sentence for the shop in `note`.
std::vector<Supply> planSupplies(const Session& session, const std::vector<QuiltPlan>& quilts);

} // namespace bastewright
