#pragma once

#include "session/private/remaining.h"

#include <stop_token>
#include <vector>

namespace bastewright {

/// A schedule of what is left, from now on: work in hand at once; the old people, order and places,
/// unless another schedule saves enough to be worth sending people elsewhere.
crew::Schedule scheduleOf(const Remaining& rest, const std::vector<Hand>& hands, int bound,
                          int effort, std::stop_token stop);

/// Where an activity that takes a place is worked from.
StandingPlace placeOf(const Remaining& rest, const crew::Schedule& schedule, std::size_t activity);

} // namespace bastewright
