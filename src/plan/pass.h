#pragma once

#include "measures/region.h"
#include "measures/sentence.h"

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
    auto operator<=>(const Hold&) const = default;
};

/// Quilt beyond a side of the table that is rolled or folded so that it does not drag.
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
    Rect field;     ///< what lies on the table inside the rim and inside the top
    Region fresh;   ///< the part of it that is basted in this pass; the fresh areas tile the top
    Rect table;     ///< the whole surface, in the quilt's frame, as it lies in this pass
    Vec shift;      ///< how far the quilt moves on the table before this pass; zero in the first
    std::vector<std::string> zones;
    std::vector<Hold> holds; ///< in working order
    /// How far each layer reaches beyond the table on each side; negative: ends on the table.
    PerSide<Length> backingOverhang, battingOverhang, topOverhang;
    /// Backing beyond the top on each side, after everything is centred: the spare to compare.
    PerSide<Length> backingSpare, battingSpare;
    std::vector<Roll> rolls;
    std::vector<Side> smoothTowards; ///< away from basted area; all four sides in the first pass
    int liftPeople = 1;              ///< hands for the shift into this pass
    double liftKilograms = 0;        ///< what they move
    auto operator<=>(const Pass&) const = default;
};

} // namespace bastewright
