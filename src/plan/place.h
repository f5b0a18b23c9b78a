#pragma once

#include "measures/geometry.h"

#include <string>
#include <vector>

/// Where people stand round a table.
namespace bastewright {

/// Where somebody stands: an interval along one side of the table, in the quilt's frame of that
/// pass (x for head and foot, y for left and right).
struct StandingPlace {
    Side side = Side::foot;
    Interval along;
    auto operator<=>(const StandingPlace&) const = default;
};

/// One person's part of the open sides in a pass: everything they do at a zone is done from there.
/// May go round a corner, so it has an interval on one or more sides.
struct Stretch {
    std::string place; ///< letter: A, B, C … round the table
    std::string person;
    std::vector<StandingPlace> edges;
    auto operator<=>(const Stretch&) const = default;
};

} // namespace bastewright
