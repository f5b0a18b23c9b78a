#pragma once

#include "plan/plan.h"

#include <set>
#include <span>
#include <string>
#include <vector>

/// Where breaks are proposed (docs/computation/crew.md, "Hours, breaks").
namespace bastewright::crew {

/// Breaks are proposed where work would go on for longer than an hour and a half: as few as keep
/// everybody from working on for more than 105 minutes (common practice: every 75 to 90).
inline constexpr int kProposeBeyond = 90 * 60, kBreakAtLast = 105 * 60, kBreakLasts = 10 * 60;

/// Seconds of proposed breaks that so much work takes at least, where the last break ended `since`
/// before it and nobody works on for longer than `most`: for bounds.
double leastRests(double since, double work, double most);

/// One call as it is planned without proposed breaks. What several people do at zones can be
/// broken off between zones.
struct CallSpan {
    std::string id;
    int start = 0, end = 0;
    bool opensPass = false;
};

/// The calls before which there is a break, by their ids: as few as will do, of those the most
/// even, between passes rather than within one. `lastRest` is when the last break ended; `told` are
/// those that are there already. Where a call alone is too long it is broken off, and what follows
/// counts from there. None where work does not go on for longer than `beyond` seconds: whoever has
/// had a break already may go on for longer than at first, or else a day whose breaks are settled
/// pass by pass would have one more than a day that is settled at once.
std::set<std::string> restsBefore(int lastRest, std::span<const CallSpan> calls,
                                  std::span<const PlannedBreak> told, int beyond = kProposeBeyond);

} // namespace bastewright::crew
