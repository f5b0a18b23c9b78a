#pragma once

#include "planners/crew/able.h"
#include "planners/crew/times.h"

/// What has to be done, before anybody is named (docs/computation/crew.md, "Tasks").
namespace bastewright::crew {

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

} // namespace bastewright::crew
