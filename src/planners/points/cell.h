#pragma once

#include "planners/points/buckets.h"

namespace bastewright::points {

/// Corners of the part of the top that is nearer to `own` than to any other of the points in
/// `near`, where `id` is its own number; empty where that is nothing. `reach` is a first guess of
/// how far the neighbours are that count.
void cellOf(int id, Spot own, const Buckets& near, const Field& top, double reach, Spots& cell,
            Spots& scratch);

/// Square of the distance of the farthest of some places.
double farthestFrom(Spot at, const Spots& places);

/// Middle of the smallest circle round some places (Welzl, 1991); there must be at least one.
Spot middleOfSmallestCircle(const Spots& places);

} // namespace bastewright::points
