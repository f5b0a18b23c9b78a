#pragma once

#include "planners/crew/search.h"

namespace bastewright::crew {

/// For work with barriers, and for several surfaces: sections between barriers are planned one
/// after another, each searched by itself among what is booked already. Which section is next goes
/// by when it can begin and by how urgent its surface is; sweeps over all of it try different
/// weights of the two, and learn how urgent each surface is from the sweep before. With one surface
/// and all people there from the start, the best of every section makes the best of the whole.
///
/// `options.schedules` counts whole schedules' worth of work. Deterministic.
Schedule searchBySweeps(const Problem& problem, const Schedule& first, const SearchOptions& options,
                        std::stop_token stop = {});

} // namespace bastewright::crew
