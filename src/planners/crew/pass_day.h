#pragma once

#include "planners/crew/quilt_table.h"
#include "planners/crew/rests.h"
#include "planners/crew/situation.h"

/// One pass from its first call to its last (docs/computation/crew.md, "Calls").
namespace bastewright::crew {

/// Everything that does not change while a session is planned.
struct Given {
    const Session& session;
    const std::vector<Hand>& hands;
    const std::vector<QuiltPlan>& quilts;
    const Situation& situation;
    std::vector<PlannedBreak> told; ///< breaks for everybody, by start
    std::vector<std::pair<int, int>>
        ironsUsed{}; ///< when each iron is in use at a table planned before
};

/// What one pass begins from.
struct PassStart {
    int job = 0;
    std::size_t pass = 0;                   ///< index
    std::vector<int> team;                  ///< who is at this table
    int ready = 0;                          ///< seconds from the session's start
    std::vector<std::string> barrier;       ///< ids of what has to have ended
    bool firstOnTheTable = true;            ///< the tables have still to be set up
    int lastRest = 0;                       ///< when the last break ended
    std::map<int, int> work{};              ///< seconds each has worked so far
    std::vector<const PassCrew*> earlier{}; ///< of the passes before this, by index
    /// Calls before which there is a break, by id; others where work would go on for too long.
    /// None: no break is proposed.
    const std::set<std::string>* rests = nullptr;
};

struct PassPlan {
    std::vector<Task> tasks; ///< those that are not done
    PassCrew crew;
    std::vector<PlannedBreak> breaks; ///< proposed
    std::vector<CallSpan> calls;      ///< in their order
    std::vector<std::string> barrier;
    std::map<int, int> work; ///< seconds each has worked by then
    int start = 0, end = 0, lastRest = 0;
    int unworked = 0;                ///< zones of all calls that nobody of the team could do
    int liftersMissing = 0;          ///< of those who lift that the shift asks for
    int overtime = 0;                ///< seconds beyond somebody's hours
    int deserted = 0;                ///< places where others do all the work
    int pinsFrom = 0, pinsUntil = 0; ///< from the first zone work to the last
};

/// Plans one pass with those of the team who can be there from its first pin to the last; of
/// several choices the one that ends first.
PassPlan planPass(const Given& given, QuiltTable& table, Letters& letters, const PassStart& start);

/// How good passes are together but for when they end, less is better: seconds beyond somebody's
/// hours, then zones that are left undone.
std::pair<int, int> howGood(std::span<const PassPlan> passes);

/// Not the same people have zones in every pass.
bool crewsDiffer(std::span<const PassPlan> passes);

/// The id of a task.
std::string taskId(int job, int pass, std::string_view zone, TaskKind kind, bool fromBack = false);

} // namespace bastewright::crew
