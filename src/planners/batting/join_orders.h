#pragma once

#include "planners/batting/join_rows.h"

namespace bastewright::batting {

/// Orders of the parts of every row.

/// That of fewest ends of joins on the batting's edges, and so of the shortest joins.
void plainOrder(Sized& sized, unsigned sides = kLeft | kRight | kHead | kFoot);

/// Any, drawn from `seed`.
void shuffle(Sized& sized, std::uint64_t& seed);

/// Those in which no joins meet from both sides of another within `stagger`. Not all of them where
/// a part has very many: `all` then turns false.
std::vector<Sized> staggeredOrders(const Sized& sized, std::int64_t stagger, bool& all);

} // namespace bastewright::batting
