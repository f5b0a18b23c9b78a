#pragma once

#include "planners/crew/model.h"

#include <optional>

namespace bastewright::crew {

/// The common session of two people at one table: each keeps to their own half, head and foot or
/// left and right, and both go the same way along it, so that each sees the other's side. Only the
/// last one or two zones of a half may be taken by whoever is free. Nothing for other sessions. The
/// best of such schedules; the caller decides what it may cost.
std::optional<Schedule> mirroredPair(const Model& model, const Drafts& drafts,
                                     const std::vector<QuiltPlan>& quilts);

} // namespace bastewright::crew
