#pragma once

#include "plan/plan.h"

#include <optional>
#include <vector>

/// Who can work a zone from where (docs/computation/crew.md, "Places").
namespace bastewright {

/// A pinner takes this much of an edge (common practice: 24-30 in).
inline constexpr Length kElbowRoom = Length::inches(24);

/// Bounding box of a zone's points; its area where it has none.
Rect workBox(const Zone& zone);

/// The extent of one side of the table, in the quilt's frame of that pass.
Interval extent(const Rect& table, Side side);

/// How much of a side one person takes: kElbowRoom, or the whole side where it is shorter.
Length elbowRoom(const Rect& table, Side side);

/// How many find elbow room along a side of this length: one at least.
std::size_t placesAlong(Length side);

/// Places along one side from which a box can be worked: the near end of the person's interval may
/// be anywhere in `start`.
struct SideRange {
    Side side = Side::foot;
    Interval start;
};

/// Every open side from which somebody with that reach works the whole box: each corner within
/// reach of the interval, measured straight. `limited` false (the floor) leaves reach out.
std::vector<SideRange> sidesFor(const Rect& box, const Rect& table, const std::vector<Side>& closed,
                                Length reach, bool limited);

/// The same for a helper at a surface: those sides only that they keep to, where they keep to one.
std::vector<SideRange> sidesFor(const Rect& box, const Rect& table, const SurfacePlan& surface,
                                const Helper& helper);

/// The least reach that works a box from some open side; nothing where all sides are closed.
std::optional<Length> leastReach(const Rect& box, const Rect& table,
                                 const std::vector<Side>& closed);

} // namespace bastewright
