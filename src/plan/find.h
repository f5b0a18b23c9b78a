#pragma once

#include "plan/plan.h"

#include <algorithm>
#include <string_view>

namespace bastewright {

/// The pass of this number, or null.
inline const Pass* findPass(const QuiltPlan& quilt, int number) {
    const auto at = std::ranges::find(quilt.passes, number, &Pass::number);
    return at == quilt.passes.end() ? nullptr : &*at;
}

/// The zone of this name, or null.
inline const Zone* findZone(const QuiltPlan& quilt, std::string_view id) {
    const auto at = std::ranges::find(quilt.zones, id, &Zone::id);
    return at == quilt.zones.end() ? nullptr : &*at;
}

} // namespace bastewright
