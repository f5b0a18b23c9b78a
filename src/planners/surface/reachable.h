#pragma once

#include "plan/plan.h"

#include <optional>
#include <span>
#include <vector>

/// Who gets to which place of a table, and what of it nobody gets to. Reach is measured straight,
/// from the edge of the table: a circle round where somebody stands.
namespace bastewright {

/// Work at a place reached by leaning takes half as long again (docs/computation/passes.md).
enum class ReachKind { easy, leaning };
inline constexpr double kLeaningFactor = 1.5;

/// How far somebody gets in all: their reach, and what they lean where they stand.
Length leaningReach(const Helper& helper);

/// From a place to an edge of the table; negative beyond it.
Length depthFrom(Point place, const Rect& table, Side side);

/// From a place to the nearest of these edges; nothing where there are none.
std::optional<Length> nearestDepth(Point place, const Rect& table, std::span<const Side> sides);

/// Whether a helper gets to a place from some side that is not closed; nothing where they do not.
std::optional<ReachKind> reachOf(const Helper& helper, Point place, const Rect& table,
                                 const std::vector<Side>& closed);

/// The same at a surface as the plan has it: nothing is out of reach on the floor, and who keeps to
/// one side works from there. `table` is the surface as it lies in a pass (`Pass::table`).
std::optional<ReachKind> reachOf(const Helper& helper, Point place, const Rect& table,
                                 const SurfacePlan& surface);

/// The same from a stretch of one side.
std::optional<ReachKind> reachFrom(const Helper& helper, Point place, const Rect& table, Side side,
                                   Interval stretch);

/// The farthest that anybody of those present gets without leaning; the trade's 27 in where there
/// is nobody.
Length easyReach(std::span<const Helper> helpers);

/// The farthest that anybody of those present gets who may place and close a point; the trade's 27
/// and 4 in where there is nobody.
Length farthestReach(std::span<const Helper> helpers, Basting::With with);

/// What of a table lies farther than `reach` from every open side: a rectangle, empty where there
/// is nothing. With every side closed it is the whole table.
Rect outOfReach(const Rect& table, const std::vector<Side>& closed, Length reach);

/// A middle whose narrower side is at most this is smoothed with the rest (a yardstick helps) and
/// worked after the quilt, held, has been pulled across by its width (from memory).
inline constexpr Length kPulledAcross = Length::inches(12);

} // namespace bastewright
