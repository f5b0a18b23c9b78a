#pragma once

#include "planners/backing/backing.h"
#include "planners/points/points.h"
#include "planners/whole/sharing.h"

namespace bastewright {

/// Sizes of the three layers: measured where the job says so, else top plus overage on every side.
LayerSizes layerSizes(const Job& job);
/// Of each job.
std::vector<LayerSizes> layerSizes(const Session& session);

/// How a quilt lies on a surface by a choice: surface and passes. The crew planner cuts its zones.
/// Of a choice that does not work only the name and the layers' sizes.
QuiltPlan layQuilt(const Session& session, std::size_t job, const PassChoice& choice, int surface,
                   const LayerSizes& layers, const PointsPlan& points);

/// The whole plan of one quilt from how it lies by the first of its choices (`layQuilt`, with
/// zones): adds rows, backing, batting, rolls for the machine, alternatives. Findings about it are
/// added to `findings`, their fields from the job's own root.
QuiltPlan planQuilt(const Session& session, const Shared& shared, QuiltPlan lying,
                    const PointsPlan& points, Findings& findings);

/// What was asked for of the way and is not had by this one, its fields from the job's own root.
Findings notAsAskedFor(const Session& session, const Job& job, const Alternative& way);

/// The backing of a quilt that is to be pieced, its seams kept off the joints of the table under
/// the first pass of `quilt`; with `ways`, every alternative laid out. What planQuilt plans with.
BackingOutcome pieceBacking(const Job& job, const QuiltPlan& quilt, bool ways);

/// Findings about one quilt's plan: gap limit, what speaks against its way of basting, throat,
/// joints.
Findings adviceOn(const Session& session, const Job& job, const QuiltPlan& quilt);

/// Rolls that are folded because no clip on hand holds them.
Findings adviceOnClips(const Session& session, const std::vector<QuiltPlan>& quilts);

/// Too few pins for all quilts together: what more to bring, dots where some quilt may have them,
/// or what spacing the pins allow; and where dots are planned, in which passes or zones.
Findings adviceOnPins(const Session& session, const std::vector<QuiltPlan>& quilts);

} // namespace bastewright
