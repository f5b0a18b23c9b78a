#pragma once

#include "planners/crew/problem.h"
#include "planners/crew/profile.h"
#include "planners/crew/standing.h"

#include <optional>

namespace bastewright::crew {

/// Builds a schedule from an order of activities: one after another, each gets the people, the
/// place and the time at which it ends soonest, in any gap left by those before it (serial schedule
/// generation, Kelley 1963). So a person may be waited for where that ends sooner, and a team
/// gathers in time because the people it needs are spoken for.
///
/// Every problem without hours has an order that leads to a best schedule when tools alone are
/// short. Where nobody's hours suffice, somebody stays beyond `until`: see Schedule::overtime.
///
/// Keeps its working memory between calls; one decoder serves one thread.
class Decoder {
public:
    explicit Decoder(const Problem& problem);

    /// `order` holds every activity after those it waits for. `who` is empty, or names for each
    /// activity the one person who may do it (-1: anybody who may).
    void build(std::span<const int> order, std::span<const int> who, Schedule& out);

    /// Takes the hours and bookings anew from the problem it was made with.
    void readHours();

private:
    struct Busy {
        int start, end;
    };
    struct Choice {
        int person = -1, start = 0, end = kNever;
        Standing::Room room{};
    };

    int freeFrom(int person, int ready, int seconds, bool overtime) const;
    int gapEnd(int person, int time, bool overtime, int& freeAgain) const;
    Choice chooseOne(const Activity& a, int ready, int only, int besides, bool overtime) const;
    int gatherTeam(const Activity& a, int ready, bool overtime, std::vector<int>& team) const;
    void schedule(int i, int only, Schedule& out);

    const Problem& problem_;
    Profile profile_, profileBooked_;
    std::vector<std::vector<Busy>> busy_, booked_; ///< by person, ascending
    Standing standing_;
    std::vector<int> load_, over_;
};

} // namespace bastewright::crew
