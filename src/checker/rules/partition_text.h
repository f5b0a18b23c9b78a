#pragma once

#include "checker/geometry/partition.h"
#include "checker/view.h"

#include <span>

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

/// Where it fails: the part that cannot be, or the list where several are at fault.
inline Pointer where(const PartitionFault& fault, const Pointer& list,
                     std::span<const Rect> parts) {
    using Kind = PartitionFault::Kind;
    for (std::size_t i = 0; i < parts.size(); ++i)
        if ((fault.kind == Kind::empty || fault.kind == Kind::outside) && parts[i] == fault.where)
            return list / i;
    return list;
}

} // namespace bastewright::check
