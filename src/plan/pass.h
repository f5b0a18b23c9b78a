#pragma once

#include "measures/region.h"
#include "measures/sentence.h"
#include "plan/place.h"

#include <string>
#include <vector>

/// Where the quilt lies in each pass, and how it is held. In the quilt's own frame (see `Point`)
/// unless said otherwise.
namespace bastewright {

/// Whole tables pushed together into one rectangle, or the floor.
struct SurfacePlan {
    Sentence name;        ///< "2 tables end to end", "floor"; for people
    int number = 1;       ///< surfaces of one session are numbered from 1
    Length length, width; ///< length >= width; drawn with its length left to right
    bool floor = false;
    /// True where the quilt's length lies along the surface's length: then its head points to the
    /// surface's left. Otherwise its head points to the surface's far long side.
    bool quiltLengthAlongLength = false;
    std::vector<Rect> tables; ///< in the surface's frame: x along its length, y along its width
    std::vector<Side> closed; ///< sides of the *quilt* at which nobody can stand while it lies here
    auto operator<=>(const SurfacePlan&) const = default;
};

/// How a side of the backing is held in a pass.
struct Hold {
    enum class Kind { clamp, tape };
    Side side = Side::head;
    Kind kind = Kind::clamp;
    int count = 0;
    Length length;                 ///< of tape in all; zero for clamps
    std::vector<Length> positions; ///< along the side (x or y of the quilt), in working order
    /// The round in which each of `positions` is set, from 1. Holds with one number face each other
    /// and are set at the same moment; nobody sets the next before.
    std::vector<int> numbers{};
    Length
        apart{}; ///< about so far from one to the next, whole inches or centimetres; zero for one
    auto operator<=>(const Hold&) const = default;
};

/// What becomes of the quilt beyond a side of the table.
enum class Beyond {
    nothing,    ///< the backing ends on the table
    hangs,      ///< its weight keeps the backing firm
    chairs,     ///< so much that it would lie on the floor: rests on chairs
    spareTable, ///< the same, on a table of the room that nothing lies on
    rolled,     ///< worked from one end: rolled, and unrolled as the work goes
    onTable     ///< against a wall: rolled or folded on the edge of the table
};

/// Quilt beyond a side of the table that is rolled or folded.
struct Roll {
    Side side = Side::left;
    Length rolled; ///< how much quilt is in it, measured across the roll
    Length along;  ///< length of the roll
    Length diameter;
    Length clipHolds; ///< nominal size of the clip that holds it; zero where none on hand does
    int clips = 0;
    bool folded = false; ///< fan-folded on a support instead of rolled
    auto operator<=>(const Roll&) const = default;
};

struct Pass {
    int number = 1; ///< in working order, from 1
    /// True for what the pass before left out of reach, in the middle of a deep table or as a last
    /// row: the quilt, held, is pulled across, and nothing is laid. Not counted as a pass.
    bool pulled = false;
    Rect field; ///< what lies on the table, inside the rim where the top goes on past its edge
    /// What is basted in this pass: its points lie in the field, the boundary, half a row farther,
    /// may lie outside it. The fresh areas of all passes tile the top.
    Region fresh;
    Rect table; ///< the whole surface, in the quilt's frame, as it lies in this pass
    Vec shift;  ///< how far the quilt moves on the table before this pass; zero in the first
    std::vector<std::string> zones;
    std::vector<Stretch> stretches; ///< one for each who works at the table in this pass, by letter
    std::vector<Hold> holds;        ///< in working order
    /// How far each layer reaches beyond the table on each side; negative: ends on the table.
    PerSide<Length> backingOverhang, battingOverhang, topOverhang;
    /// Backing beyond the top on each side, after everything is centred: the spare to compare.
    PerSide<Length> backingSpare, battingSpare;
    PerSide<Beyond> beyond; ///< what becomes of the quilt past each side of the table
    std::vector<Roll> rolls;
    std::vector<Side> smoothTowards; ///< away from basted area; all four sides in the first pass
    int liftPeople = 1;              ///< hands for the shift into this pass
    double liftKilograms = 0;        ///< what they move
    auto operator<=>(const Pass&) const = default;
};

} // namespace bastewright
