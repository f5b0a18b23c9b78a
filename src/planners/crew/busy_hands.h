#pragma once

#include "planners/crew/standing.h"

#include <span>

namespace bastewright::crew {

/// Builds a schedule in which nobody waits who could do something (parallel schedule generation,
/// Kelley 1963; Graham 1966): whenever somebody is free, the most urgent work they can begin
/// begins. Only for the most urgent team that is still gathering are people held back. Keeps all
/// hands busy where people are what is short; where places or stages are, Decoder does better.
///
/// For problems without bookings.
class BusyHands {
public:
    explicit BusyHands(const Problem& problem);

    /// The largest `urgency` first.
    void build(std::span<const double> urgency, Schedule& out);

private:
    bool startOne(int i, int now, bool overtime, Schedule& out);
    bool startTeam(int i, int now, bool overtime, bool mayHold, bool& held, Schedule& out);
    void begin(int i, std::vector<int> team, int now, int seconds, Schedule& out);
    bool free(int person, int now, int seconds, bool overtime) const;
    bool toolsFree(const Activity& a) const;

    const Problem& problem_;
    std::vector<std::vector<int>> next_;
    Standing standing_;
    std::vector<int> busyUntil_, load_, waits_, tools_, over_;
    std::vector<char> held_;
    struct Running {
        int end, activity;
    };
    std::vector<Running> running_; ///< a heap, soonest end first
    int idle_ = 0;
};

} // namespace bastewright::crew
