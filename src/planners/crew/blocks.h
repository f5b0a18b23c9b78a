#pragma once

#include "planners/crew/pass_day.h"

#include <stop_token>

namespace bastewright::crew {

/// One pass of one quilt, and who is at its table for all of it.
struct Block {
    int job = 0;
    std::size_t pass = 0; ///< index
    int surface = 1;
    std::vector<int> team{};
};

/// For several tables: who is at which table for which pass, and in which order the passes begin.
/// How many go to a table comes from the bound's prices of tables and people, and is varied; who
/// and when is a resource-constrained project (problem.h), searched. People stay at a table as long
/// as that costs nothing.
void handOut(const Given& given, const std::vector<QuiltTable>& tables, std::vector<Block>& blocks,
             int effort, const std::stop_token& stop);

} // namespace bastewright::crew
