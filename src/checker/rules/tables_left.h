#pragma once

#include "checker/view.h"

#include <functional>
#include <map>
#include <utility>

namespace bastewright::check {

using TableSize = std::pair<Length, Length>; ///< the longer side first

/// Of every size the tables of the room less those under these quilts; quilts of one surface follow
/// one another, its tables pushed together anew for each, so the most of any of them count.
std::map<TableSize, int> tablesLeft(const PlanView& view,
                                    const std::function<bool(const QuiltView&)>& counts);

} // namespace bastewright::check
