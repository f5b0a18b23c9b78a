#pragma once

#include "planners/backing/backing.h"
#include "planners/points/points.h"
#include "planners/whole/sharing.h"

namespace bastewright {

/// Sizes of the three layers: measured where the job says so, else top plus overage on every side.
LayerSizes layerSizes(const Job& job);

/// One quilt's plan without people: surface, passes, layers, rolls,
/// alternatives. Findings about it are added to `findings`, their fields below `prefix` ("" or
/// "/jobs/2").
QuiltPlan planQuilt(const Session& session, const Shared& shared, const LayerSizes& layers,
                    const PointsPlan& points, const std::string& prefix, Findings& findings);

/// The backing of a quilt that is to be pieced, its seams kept off the joints of the table under the
/// first pass of `quilt`; with `ways`, every alternative laid out. What planQuilt plans with.
BackingOutcome pieceBacking(const Job& job, const QuiltPlan& quilt, bool ways);

/// Findings about one quilt's plan: gap limit, melting batting, throat, joints, rolls without a
/// clip.
Findings adviceOn(const Job& job, const QuiltPlan& quilt, const std::string& prefix);

/// Too few pins for all quilts together: what more to bring, which zones could take dots instead
/// (said in the first quilt that holds enough of them), or what spacing the pins allow.
Findings adviceOnPins(const Session& session, std::vector<QuiltPlan>& quilts);

} // namespace bastewright
