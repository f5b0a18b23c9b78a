#pragma once

#include "job/job.h"

#include <vector>

namespace bastewright {

/// Helpers in an order that says nothing of where they are listed: the quickest first, of those who
/// are as quick who reaches farthest, then by what else tells them apart, their names last. Whoever
/// plans with people in an order begins with this one, so that the order of the file changes
/// nothing but the letters of places.
std::vector<Helper> inOneOrder(std::vector<Helper> helpers);

/// A pace to divide by: 1 in place of none.
constexpr double soundPace(double pace) {
    return pace > 0 ? pace : 1;
}

} // namespace bastewright
