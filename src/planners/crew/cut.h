#pragma once

#include "planners/crew/sharing.h"

namespace bastewright::crew {

/// How somebody takes about so many points of a zone that another person works: which they are, so
/// that both reach theirs from different places. Who stands beside the other takes the points on
/// their own hand; who stands at another side takes those nearest to it. The cut goes between rows
/// of points where one is near. Nothing where there is no such place.
std::optional<Share> cutFor(const Given& given, const Planned& plan, int activity, int taker,
                            int points);

} // namespace bastewright::crew
