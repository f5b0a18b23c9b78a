#pragma once

#include "plan/plan.h"
#include "planners/surface/arrangement.h"

namespace bastewright {

/// How far a layer of this size, centred under the top, reaches beyond the table on each side.
PerSide<Length> overhang(Size layer, Size top, const Rect& table);

/// What a layer has beyond the top on each side.
PerSide<Length> spare(Size layer, Size top);

/// More of the quilt than this beyond a table's edge would lie on the floor: tables are about 30 in
/// high (ITTF Laws 2.1: 76 cm).
inline constexpr Length kHangsFree = Length::inches(28);

/// A roll is worth its clips from here on.
inline constexpr Length kWorthRolling = Length::inches(12);

struct BeyondInput {
    PerSide<Length> backing, top; ///< overhang
    std::vector<Side> walls;      ///< sides over which nothing can hang
    bool floor = false;
    bool rolled = false;     ///< the layers are rolled and unrolled as the work goes
    bool spareTable = false; ///< the room has a table that is not part of the surface
};

/// What becomes of the quilt beyond each side: it hangs, which keeps the backing firm; rests on a
/// spare table or on chairs where it would lie on the floor; is rolled where work goes on from one
/// end; lies on the edge of the table against a wall.
PerSide<Beyond> beyond(const BeyondInput& in);

/// True where the room has a table of the same group that the surface leaves over.
bool hasSpareTable(const Room& room, const Arrangement& surface);

/// How the backing is held in a pass: clamps where it hangs over a side of the table (common
/// practice: one per 12-18 in, at least two), tape where it ends on it (a 6 in piece every 12 in),
/// nothing at a wall where the rest lies rolled on the edge. Only along the new area and the anchor
/// beside it, to the end of the cloth where the top ends: what is basted holds by itself. The
/// numbers say in what order: middles of the long sides, middles of the short sides, then outward
/// in turn; opposite holds at the same moment. Odd numbers lie along the long sides and even ones
/// at the short, so that a hold keeps its number in every pass, however many others there are. The
/// floor takes only tape.
std::vector<Hold> holds(Size backing, Size top, const Rect& table, const Rect& fresh,
                        const PerSide<Beyond>& beyond, bool floor, Unit unit);

/// What is rolled in a pass, with the clip on hand that holds it; folded where none does. `pass`
/// has its table and what is beyond it.
std::vector<Roll> passRolls(const Job& job, const Stash& stash, Size backing, Size top,
                            const Pass& pass);

/// The finished sandwich rolled from both long sides for quilting from its centre: half of it in
/// each; folded where no clip on hand holds it and none that is sold would.
std::vector<Roll> machineRolls(const Job& job, const Stash& stash, Size backing);

} // namespace bastewright
