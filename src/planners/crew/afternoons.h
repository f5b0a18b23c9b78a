#pragma once

#include "plan/plan.h"
#include "planners/crew/hands.h"

#include <map>
#include <span>

/// The same work on many afternoons (docs/computation/crew.md, "Time is a range").
namespace bastewright::crew {

/// What is known of somebody's time against the plan's: the logarithm's middle and how far it may
/// be off.
struct PaceDoubt {
    double middle = 0;
    double spread = 0;
    /// How much of what is open of the common part is open of this person too: of somebody whose
    /// own time is known well, little.
    double ofCommon = 1;
};

/// What an afternoon is simulated from.
struct AfternoonFrom {
    Seconds now{};
    std::vector<Hand> hands;
    std::map<std::string, PaceDoubt> people{}; ///< whom nothing is known of: the trade's spread
    PaceDoubt common{};                        ///< of all together
    /// Time already spent on tasks in hand.
    std::map<std::string, Seconds> inHand{};
};

/// Before anything is learnt.
AfternoonFrom afternoonOf(const std::vector<Hand>& hands, Seconds now);

/// When the last of the tasks is done: the middle and nine in ten of simulated afternoons, always
/// the same for the same question. Tasks keep their people and order; each begins when what it
/// waits for has ended and its people are there; a break is taken where it is planned, when the
/// work before it is through.
FinishRange finishRange(std::span<const Task> tasks, std::span<const PlannedBreak> breaks,
                        const AfternoonFrom& from);

} // namespace bastewright::crew
