#pragma once

#include "job/finding.h"
#include "plan/plan.h"

#include <span>

/// Zones that were put into somebody's hands (Job::handed). A wish is kept wherever that person may
/// do the work, reaches it and stands in nobody's way; their hours are theirs to keep.
namespace bastewright::crew {

/// Why a helper cannot do these kinds of work on a zone: one sentence, empty where they can.
Sentence whyNot(const Helper& helper, const QuiltPlan& quilt, const Zone& zone,
                std::span<const TaskKind> work, Unit unit);

/// A warning for every wish that the tasks do not keep, with the reason.
void sayHanded(const Session& session, const std::vector<Helper>& helpers,
               const std::vector<QuiltPlan>& quilts, std::span<const Task> tasks,
               Findings& findings);

} // namespace bastewright::crew
