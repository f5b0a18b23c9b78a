#pragma once

#include "planners/crew/model.h"
#include "session/live_state.h"
#include "session/replan.h"

#include <set>
#include <vector>

namespace bastewright {

/// Somebody who is, or will be, at the table, with times from now on.
struct Hand {
    Helper helper; ///< at the learnt pace
    crew::Person hours;
    bool present = true;
};

/// The people who can be planned for.
/// Somebody's pace with what was learnt of it, within what a file may hold.
double paceWith(const Helper& helper, const ReplanOptions& options);

std::vector<Hand> handsOf(const Setting& setting, const LiveState& state,
                          const ReplanOptions& options);

/// The tasks that may be in hand: all their people are at the table and have nothing before it, and
/// everything it waits for is done; cooling has no people to wait for. Of presses no more than
/// there are irons, and of people at one edge only those who fit, the earlier planned first.
std::vector<const Task*> tasksInHand(const Plan& plan, const LiveState& state, int irons);

/// What is left of a plan, as the crew planner's own drafts and problem. Activity i is `tasks[i]`;
/// people beyond the number of hands are shadows: `shadows[k]` is the hand that person
/// hands.size() + k stands in for, at work in hand.
struct Remaining {
    std::vector<const Task*> tasks;
    crew::Drafts drafts;
    crew::Model model;
    std::vector<std::size_t> shadows;
    std::set<std::size_t> inHand; ///< activities in hand
    Findings findings;
};

/// Drafts everything that is not done (tasks, drafts and findings of `out`).
void draftRest(const Session& session, const Plan& plan, const LiveState& state,
               const std::vector<Hand>& hands, Seconds now, Remaining& out);

/// `plan` and `hands` have to outlive the result.
Remaining remainingOf(const Session& session, const Plan& plan, const LiveState& state,
                      const std::vector<Hand>& hands, const ReplanOptions& options);

/// Binds a mode to one place, where the person reaches the work from there; else changes nothing.
void standAt(const StandingPlace& place, crew::Mode& mode, crew::Model& model);

} // namespace bastewright
