#pragma once

#include "plan/plan.h"
#include "planners/surface/reachable.h"

#include <optional>
#include <span>
#include <vector>

/// Who reaches what from where (docs/computation/crew.md, "Places"). All in the quilt's frame of
/// one pass.
namespace bastewright::crew {

/// A pinner takes this much of an edge (common practice: 24-30 in).
inline constexpr Length kRoom = Length::inches(24);

/// The extent of one side of the table.
Interval sideOf(const Rect& table, Side side);

/// How much of a side one person takes: kRoom, or the whole side where it is shorter.
Length roomAt(const Rect& table, Side side);

/// How somebody gets to a point from the best of several intervals.
std::optional<ReachKind> reaching(const Helper& helper, const Rect& table,
                                  std::span<const StandingPlace> places, Point point);

/// How many of the points somebody reaches from an interval only by leaning; nothing where they do
/// not reach all of them. `limited` false (the floor) leaves reach out.
std::optional<int> leanings(const Helper& helper, const Rect& table, const StandingPlace& place,
                            std::span<const PlacedPoint> points, bool limited);

/// Where somebody stands for these points within one interval of a side: in front of them, at least
/// one person's room wide.
StandingPlace inFront(const Rect& table, const StandingPlace& within,
                      std::span<const PlacedPoint> points);

/// The best place for these points within any of several intervals: least leaning, then nearest.
std::optional<StandingPlace> bestPlace(const Helper& helper, const Rect& table,
                                       std::span<const StandingPlace> within,
                                       std::span<const PlacedPoint> points, bool limited);

/// All open sides of a table, each as a whole.
std::vector<StandingPlace> openSides(const Rect& table, const std::vector<Side>& closed);

} // namespace bastewright::crew
