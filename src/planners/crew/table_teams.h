#pragma once

#include "planners/crew/pass_work.h"
#include "ways/way.h"

/// Who belongs to which of several tables from some moment on.
namespace bastewright::crew {

inline constexpr int kNoTable = -1;

/// What is left to be done at a table.
struct TableLeft {
    int ready = 0;                ///< when its next pass can begin
    std::vector<PassWork> work{}; ///< all of it, passes of one kind added up; none: through
    double scale = 1;             ///< what passes take here for each second that is thought
    int passes = 0, pass = 0;     ///< how many are left; seconds of the next for a few people
    double next = 0;              ///< share of the next in all that is left
    int lifters = 1;              ///< people who lift that the next pass asks for
    const Way* way = &allWays().front();
    int rested = 0; ///< when its people's last break ended; 0: nobody proposes breaks
};

/// Where somebody is now.
struct Whereabouts {
    int table = kNoTable; ///< index
    int free = 0;         ///< when they are through there
    int rested = 0;       ///< when their last break ended
};

/// Puts people to tables so that the last table is through as early as can be, the others soon too;
/// starts from `belongs`, the table of each hand (kNoTable: to be found), and changes it by one
/// person or two exchanged (simulated annealing, Kirkpatrick, Gelatt and Vecchi 1983; of a fixed
/// number of changes, the same ones for the same `seed`). Whoever is at no table yet goes anywhere;
/// whoever comes with less rest than the table's people brings their break forward. Every table
/// keeps whom its next pass needs, where there are so many: those who lift, look underneath, close
/// or iron.
std::vector<int> teamsFor(const std::vector<Hand>& hands, const std::vector<TableLeft>& tables,
                          const std::vector<Whereabouts>& people, std::vector<int> belongs,
                          std::uint64_t seed);

/// What the next pass of a table needs somebody for and has nobody: the more the larger.
int lacking(const std::vector<Hand>& hands, const TableLeft& table, const std::vector<int>& team);

} // namespace bastewright::crew
