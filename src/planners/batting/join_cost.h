#pragma once

#include <cstdint>
#include <vector>

namespace bastewright::batting {

/// Join length a part costs for one more nanometre of its extent, over a stretch of extent.
struct Stretch {
    std::int64_t size;
    int slope;
};

/// What the joins inside a part cost along one axis, by the extent it is given: convex, as slopes
/// never fall. Its sizes add up to the largest extent.
using Cost = std::vector<Stretch>;

/// Largest extent.
std::int64_t total(const Cost& cost);

/// Least length of joins at an extent up to the largest.
std::int64_t at(const Cost& cost, std::int64_t extent);

/// Two parts with one join between them, along the axis of the join: both have the whole extent,
/// and so has the join.
Cost shared(const Cost& a, const Cost& b);

/// Two parts one after the other: the cheap stretches are used first.
Cost following(const Cost& a, const Cost& b);

} // namespace bastewright::batting
