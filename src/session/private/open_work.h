#pragma once

#include "measures/sentence.h"
#include "session/live_state.h"
#include "session/private/plan_index.h"

#include <optional>
#include <string>
#include <vector>

namespace bastewright {

/// What has to come first: steps and zones that are being worked at, or else the release of a pass.
/// Empty where nothing has to.
struct ComesFirst {
    std::vector<const Task*> tasks; ///< in the plan's order
    std::optional<int> release;     ///< a pass that is done and not let go
    bool empty() const { return tasks.empty() && !release; }
};

/// What of a plan is not done, and in which order it may be: the graph of its tasks, the release of
/// passes and zones that were left out. What it is made of must outlive it.
class OpenWork {
public:
    OpenWork(const PlanIndex& index, const LiveState& state)
        : index_{index}
        , state_{state} {}

    const PlanIndex& index() const { return index_; }

    bool isDone(const Task& task) const { return state_.doneTasks.contains(task.id); }
    bool isSetAside(const Task& task) const {
        return !task.zone.empty() && state_.setAside.contains({task.job, task.zone});
    }
    /// Comes when the last pass is let go: rolling up, and what is done from the back.
    bool isLast(const Task& task) const;
    int pass(int job) const { return state_.currentPass[static_cast<std::size_t>(job)]; }
    bool lastReleased(int job) const;
    /// True where the task's pass is on the table.
    bool onTable(const Task& task) const;

    /// The quilt's tasks that are on the table and not done, in the plan's order.
    std::vector<const Task*> open(int job) const;
    /// Zones of the pass on the table that are not done and have no task: nobody is left for them.
    std::vector<const Zone*> zonesOfNobody(int job) const;
    /// Nothing that is on the table now waits to be done; the pass may still have to be let go.
    bool allDone(int job) const { return open(job).empty() && zonesOfNobody(job).empty(); }

    /// What the task waits for, down to what is being done at this moment.
    ComesFirst before(const Task& task) const;
    /// The same for a zone without a task: every step of its pass of an earlier call.
    ComesFirst before(const Zone& zone, int job, Tick tick) const;
    bool ready(const Task& task) const;

private:
    void addBefore(const Task& task, std::vector<const Task*>& seen, ComesFirst& out) const;
    void addPassBefore(int job, std::vector<const Task*>& seen, ComesFirst& out) const;

    const PlanIndex& index_;
    const LiveState& state_;
};

/// "Not yet: first B1 is pinned open (Bo)."
Sentence notYet(const ComesFirst& first);
/// What a button says that is not ready: "1 zone left: B1 (Bo)".
Sentence whatIsLeft(const ComesFirst& first);
/// To be read after somebody's name: "waits for Bo: B1".
Sentence waitsFor(const ComesFirst& first, const std::string& person);

} // namespace bastewright
