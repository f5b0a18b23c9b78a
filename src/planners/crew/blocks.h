#pragma once

#include "planners/crew/pass_work.h"

#include <functional>
#include <stop_token>

namespace bastewright::crew {

/// When a pass ends, how long it takes without breaks, and when the last break of its people ended.
struct Worked {
    int end = 0, seconds = 0, lastRest = 0;
};

/// Works a pass with a team that is free then, from `start` on, and with others of who it turns out
/// it cannot do without. `ahead` is about how long each of the passes after it at that table takes.
using Works = std::function<Worked(Block& block, int start, const std::vector<int>& ahead)>;

/// For several tables: passes in the order in which they begin, each with who is at its table for
/// all of it. Whenever a table is through with a pass it is worked out to which tables people
/// should belong from then on so that the last is through soonest (`teamsFor`); who is there then
/// and belongs elsewhere goes, who is free and belongs there comes. `works` is asked for every pass
/// in turn, and its answers count. After a stop people stay where they belong. What is tried by
/// chance on the way goes by `seed`.
std::vector<Block> handOut(const Given& given, std::vector<QuiltTable>& tables,
                           std::vector<Block> blocks, const Works& works,
                           const std::stop_token& stop, std::uint64_t seed);

} // namespace bastewright::crew
