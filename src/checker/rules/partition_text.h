#pragma once

#include "checker/geometry/partition.h"
#include "checker/view.h"

namespace bastewright::check {

/// The rest of a sentence that says where a partition fails, with its full stop.
inline std::string text(const PartitionFault& fault, Unit unit) {
    using Kind = PartitionFault::Kind;
    const std::string where = box(fault.where, unit);
    switch (fault.kind) {
    case Kind::empty:
        return "the part at " + where + " has no area.";
    case Kind::outside:
        return "the part at " + where + " reaches beyond it.";
    case Kind::overlap:
        return where + " is in two of them.";
    case Kind::hole:
        return where + " is in none of them.";
    }
    return {};
}

} // namespace bastewright::check
