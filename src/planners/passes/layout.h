#pragma once

#include "planners/passes/axis.h"
#include "planners/surface/workable.h"

#include <string_view>
#include <vector>

namespace bastewright {

/// An area basted in one pass, and where the table lies under the quilt while it is.
struct FreshArea {
    Rect fresh;
    Rect table; ///< the surface, in the quilt's frame
    Rect field; ///< the usable part of it, clipped to the top
    /// Areas that must have been basted before: those it continues outward from. They give the
    /// anchor.
    std::vector<std::size_t> needs;
};

/// How the fresh areas lie.
enum class Shape {
    grid,         ///< rows × columns
    brickRows,    ///< rows; only the row through the centre is centred
    brickColumns, ///< columns; only the one through the centre is centred
    pinwheel,     ///< four arms round a middle one
    strips        ///< one strip after another along a whole side of what is basted
};

struct Layout {
    Shape shape = Shape::grid;
    std::vector<FreshArea> areas; ///< they partition the top
    std::size_t first = 0;
};

/// What a layout of passes depends on.
struct LayoutInput {
    Size top;
    Workable surface;
    Length anchor;
    Length row; ///< of points beside an open boundary, which the next pass bastes
    Basting::Start start = Basting::Start::centred; ///< centred or besideMiddle
    std::vector<Length> seamsX, seamsY; ///< sorted places where a boundary may run along a seam
    /// A centred start may lie beside the middle by so much where that saves a pass.
    Length besideX{}, besideY{};
};

/// Every shape that fits, fewest passes first; empty where the field is too small for any (not
/// larger than the anchor both ways) or would take more than kMostPasses.
std::vector<Layout> layouts(const LayoutInput& in);

/// No one bastes a quilt in more passes than this.
inline constexpr std::size_t kMostPasses = 64;

/// Passes that no arrangement of fields can do without: ⌈Qx/Ux⌉·⌈Qy/Uy⌉ (no field holds two of as
/// many places set just over one field apart), or the exact count along an axis where the other
/// needs one.
int leastPasses(const LayoutInput& in);

} // namespace bastewright
