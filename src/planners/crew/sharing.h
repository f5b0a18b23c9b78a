#pragma once

#include "planners/crew/model.h"

namespace bastewright::crew {

/// A schedule with the work it is of.
struct Planned {
    Drafts drafts;
    Model model;
    Schedule schedule;
};

/// Who works and in what room: what drafts and models are made from.
struct Given {
    const Session& session;
    const std::vector<Helper>& helpers;
    const std::vector<QuiltPlan>& quilts;
};

/// Lets two people share zones where that ends a wait: where somebody would stand idle until the
/// last of a stage's zones are done, they take part of one of those, so that both end together. Of
/// each stage's people those who end last give, those who have been idle longest take; a zone is
/// shared by two at most. `options` says how the work was drafted; shares are added to it.
///
/// Nothing where no stage would end sooner by enough to be worth walking up to a zone for.
std::optional<Planned> shared(const Given& given, const Planned& plan, DraftOptions& options);

} // namespace bastewright::crew
