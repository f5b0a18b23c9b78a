#pragma once

#include "planners/crew/pass_zones.h"
#include "planners/crew/situation.h"
#include "ways/way.h"

#include <span>
#include <vector>

/// Which passes, or zones of them, get what stands in for pins where the box does not last
/// (docs/computation/crew.md, "Where pins run short").
namespace bastewright::crew {

/// How a pass is basted.
struct BastedPass {
    const Way* way;               ///< all of it, or all but what has `instead`
    const Way* instead = nullptr; ///< zones near the edge of the top; null: none
    std::int64_t pins = 0;        ///< with `instead`: so many are left for the others
};

/// By quilt and pass. Whole passes get it from the last one back, of the last quilt first, until
/// the pins last; only where they do not even then, zones of first passes. A pass of which zones
/// are begun stays as it is. `points` by quilt and pass.
std::vector<std::vector<BastedPass>>
bastedPasses(const Session& session, const std::vector<QuiltPlan>& quilts,
             std::span<const std::vector<std::vector<PlacedPoint>>> points,
             const Situation& situation);

/// Says of the zones of a pass where they are basted otherwise than their quilt: of a pass with
/// `instead` of those nearest to the edge of the top, as few as leave pins for the others.
void sayHowBasted(std::vector<OwnedZone>& zones, const BastedPass& how, const Job& job, Size top);

/// Zones of the pass are begun, left out or worked by now: it keeps its zones.
bool keepsZones(const Situation& situation, int job, int pass);

} // namespace bastewright::crew
