#pragma once

#include "planners/crew/able.h"
#include "planners/crew/times.h"

#include <map>

/// What has to be done, before anybody is named (docs/computation/crew.md, "Tasks").
namespace bastewright::crew {

/// Work on one zone that may be shared by two people.
struct ZoneWork {
    int job = 0;
    int zone = 0; ///< index into the quilt's zones
    TaskKind kind = TaskKind::placeOpen;
    auto operator<=>(const ZoneWork&) const = default;
};

/// What is shared, and what one of the two has of it; the other has the rest, from the other side.
using Shares = std::map<ZoneWork, Share>;

/// True for the kinds of work that two people may share. An iron is in one person's hands.
bool mayBeShared(TaskKind kind);

struct TaskDraft {
    TaskKind kind = TaskKind::placeOpen;
    int job = 0, pass = 1;
    int wave = 0;  ///< within the pass
    int zone = -1; ///< index into the quilt's zones
    std::optional<Share> share{};
    int apart = -1; ///< the draft of the other share, which is somebody else's
    Effort effort{};
    int team = 1; ///< 0: nobody (cooling)
    Needs needs{};
    std::vector<int> after{}; ///< indices of drafts
    auto operator<=>(const TaskDraft&) const = default;
};

struct DraftOptions {
    int zonesInWave = 1'000; ///< a pass with more zones is pinned in several waves from the centre
    Shares shares{};
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
