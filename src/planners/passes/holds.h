#pragma once

#include "plan/plan.h"

namespace bastewright {

/// How far a layer of this size, centred under the top, reaches beyond the table on each side.
PerSide<Length> overhang(Size layer, Size top, const Rect& table);

/// What a layer has beyond the top on each side.
PerSide<Length> spare(Size layer, Size top);

/// How the backing is held in a pass: clamps where it hangs over a side of the table (common
/// practice: one per 12-18 in, at least two), tape where it ends on it (a 6 in piece every 12 in).
/// Middles of the long sides first, then of the short sides, then outward in turn. The floor takes
/// only tape.
std::vector<Hold> holds(Size backing, Size top, const Rect& table, bool floor);

/// The quilt hanging beyond each side by more than 12 in, rolled so that it does not drag, with the
/// clip on hand that holds it; folded on a support where none does.
std::vector<Roll> passRolls(const Job& job, const Stash& stash, Size backing, Size top,
                            const Rect& table);

/// The finished sandwich rolled from both long sides for quilting from its centre: half of it in
/// each.
std::vector<Roll> machineRolls(const Job& job, const Stash& stash, Size backing);

} // namespace bastewright
