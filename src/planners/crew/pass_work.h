#pragma once

#include "planners/crew/pass_day.h"

#include <span>

namespace bastewright::crew {

/// One pass of one quilt, and who is at its table for all of it.
struct Block {
    int job = 0;
    std::size_t pass = 0; ///< index
    int surface = 1;
    std::vector<int> team{};
};

/// The work of one pass by how it goes with who is at its table, in seconds at pace 1.
struct PassWork {
    double fixed = 0;  ///< nobody's: cooling
    double single = 0; ///< steps of one person: the quickest
    double pair = 0;   ///< steps of two, at the pace of the slower, or of one
    double shift = 0;  ///< a step of so many who lift, at the pace of the slowest
    std::size_t lifters = 1;
    double opened = 0; ///< shared by everybody's paces
    double holds = 0;  ///< shared, and over when the slowest is through
    double zones = 0;  ///< the same; so many calls
    int calls = 0;
    double steppingUp = 0; ///< at zones, see `withSteppingUp`
    double pressed = 0;    ///< the same by no more people than there are irons
    int presses = 0;
    std::size_t irons = 0;
    std::size_t room = 1; ///< people side by side at the table
    /// Another pass of as much room, as many irons, as many who lift, and the same at zones.
    void add(const PassWork& other);
};

/// No zone has more points than a zone may have.
bool fullZones(const PassCrew& crew, const Way& way);

/// The tables have still to be set up for it: it is of the first quilt on them.
bool opensTheTable(const Given& given, const Block& block);

/// What of a pass has to be done yet: of `left` only what it has tasks for, nothing of it in hand.
PassWork passWork(const Given& given, const QuiltTable& table, const Block& block,
                  bool firstOnTheTable, const PassPlan* left = nullptr);

/// How long a pass takes people of these paces (quickest first, one at least), about: everybody
/// does everything, reaches everything, and shares go by pace.
double aboutSeconds(const PassWork& work, std::span<const double> paces);

/// The most work a team can have in a second (mostWorkInASecond): of those who find room, by their
/// paces and by their paces with stepping up.
struct Rate {
    double plain = 1, withSteppingUp = 1;
};

/// Never more than it takes them where all of them take part in every call, or as many as find
/// room. The least over those who take part, for each team and all smaller ones in it, is a bound.
double leastSeconds(const PassWork& work, std::span<const double> paces, const Rate& rate);

} // namespace bastewright::crew
