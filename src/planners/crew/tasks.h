#pragma once

#include "planners/crew/reach.h"
#include "planners/crew/times.h"

/// What has to be done, before anybody is named (docs/computation/crew.md, "Tasks").
namespace bastewright::crew {

/// What a person must be able to do to take part.
struct Needs {
    bool lifts = false, irons = false, closes = false, reach = false;
    bool afoot = false; ///< walks round the table: not for seated people where others can do it
    auto operator<=>(const Needs&) const = default;
};

struct TaskDraft {
    TaskKind kind = TaskKind::placeOpen;
    int job = 0, pass = 1;
    int wave = 0;  ///< within the pass
    int zone = -1; ///< index into the quilt's zones
    Effort effort{};
    int team = 1; ///< 0: nobody (cooling)
    Needs needs{};
    std::vector<int> after{}; ///< indices of drafts
    auto operator<=>(const TaskDraft&) const = default;
};

struct DraftOptions {
    int zonesInWave = 1'000; ///< a pass with more zones is pinned in several waves from the centre
};

/// All tasks of all quilts in working order; quilts on one surface follow one another. Team sizes
/// go with the people there are. Tasks nobody can do are left out and a finding of level stop says
/// so.
struct Drafts {
    std::vector<TaskDraft> tasks;
    Findings findings;
};

Drafts draftTasks(const Session& session, const std::vector<Helper>& helpers,
                  const std::vector<QuiltPlan>& quilts, const DraftOptions& options = {});

/// True where a helper may take part in a task, reach aside.
bool may(const Helper& helper, const Needs& needs);

} // namespace bastewright::crew
