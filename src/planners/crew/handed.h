#pragma once

#include "planners/crew/model.h"

#include <span>

/// Zones that were put into somebody's hands (Job::handed). A wish is kept wherever that person may
/// do the work and reaches it; their hours are theirs to keep.
namespace bastewright::crew {

/// Why a helper cannot do these kinds of work on a zone: one sentence, empty where they can.
Sentence whyNot(const Helper& helper, const QuiltPlan& quilt, const Zone& zone,
                std::span<const TaskKind> work, Unit unit);

/// What is done on each zone of a quilt.
std::vector<TaskKind> zoneWorkOf(const Job& job);

/// Leaves the work of handed zones to the person they were handed to, where they can do it.
void honourHanded(const Session& session, const std::vector<Helper>& helpers,
                  const std::vector<QuiltPlan>& quilts, const Drafts& drafts, Model& model);

/// A warning for every wish that cannot be kept, with the reason.
void sayHanded(const Session& session, const std::vector<Helper>& helpers,
               const std::vector<QuiltPlan>& quilts, Findings& findings);

} // namespace bastewright::crew
