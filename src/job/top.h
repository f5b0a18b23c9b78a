#pragma once

#include "job/colour.h"
#include "job/photo.h"
#include "measures/geometry.h"

#include <optional>
#include <vector>

namespace bastewright {

/// A regular top: a border on all four sides; inside it rows × columns of blocks with sashing
/// between blocks (not outside them). `innerX`/`innerY` are seam positions inside every block from
/// its own head-left corner.
struct BlockGrid {
    int columns = 1, rows = 1;
    Length block = Length::inches(12); ///< side of the (square) block
    Length blockLength{};              ///< its length where blocks are oblong; zero means square
    Length sashing{}, border{};
    Length borderEnds{}; ///< at head and foot where it differs; zero means as wide as at the sides
    std::vector<Length> innerX, innerY;
    auto operator<=>(const BlockGrid&) const = default;

    constexpr Length blockHeight() const { return blockLength > Length{} ? blockLength : block; }
    constexpr Length borderAtEnds() const { return borderEnds > Length{} ? borderEnds : border; }
    constexpr Length blocksWidth() const { return columns * block + (columns - 1) * sashing; }
    constexpr Length blocksLength() const { return rows * blockHeight() + (rows - 1) * sashing; }
    constexpr Length width() const { return 2 * border + blocksWidth(); }
    constexpr Length length() const { return 2 * borderAtEnds() + blocksLength(); }
    /// The head-left corner of the first block on a top of this size: what its readings differ from
    /// the grid is shared out by the borders.
    constexpr Point firstBlock(const Rect& top) const {
        return {(top.width() - width()) / 2 + border,
                (top.length() - length()) / 2 + borderAtEnds()};
    }
};

struct Top {
    std::vector<Length> width;     ///< readings across, at least one
    std::vector<Length> length;    ///< readings from head to foot, at least one
    std::vector<Length> diagonals; ///< none, or both
    std::optional<BlockGrid> grid;
    std::vector<Segment> seams; ///< further seams, anywhere on the top
    /// The size is what the grid adds up to, by choice; else the grid never changes what was
    /// measured.
    bool sizeFromGrid = false;
    std::vector<Colour> fabrics{}; ///< none, or two to four; for pictures only
    Photo photo{};                 ///< for pictures only
    auto operator<=>(const Top&) const = default;
};

/// Size of the top as the planner takes it: the largest reading each way, so that no layer is
/// short.
Rect topRect(const Top& top);

/// What a top takes up when it is laid straight along one side. Where its diagonals differ it
/// leans: of a parallelogram with sides w and l, and diagonals d and e, the far side lies (d² − e²)
/// / 4w aside when the head lies straight, and (d² − e²) / 4l when the left side does. The larger
/// of both in each direction, from the largest readings.
Rect topEnvelope(const Top& top);

/// All seams of the top, each once: grid lines (block, sashing and border edges, inner lines) and
/// the further seams as they were given. Inner lines of touching blocks are one seam. Lines along
/// the edge of the top are not seams.
std::vector<Segment> seamsOf(const Top& top);

} // namespace bastewright
