#include "job/job_fields.h"

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

constexpr Length kSpread = Length::inch64ths(32); // 1/2 in: common practice for 'not square'

Length spread(const std::vector<Length>& readings) {
    const auto [least, most] = std::ranges::minmax(readings);
    return most - least;
}

void checkSpread(FieldReader& reader, std::string_view key, const std::vector<Length>& readings) {
    if (readings.size() > 1 && spread(readings) > kSpread)
        reader.warn(key,
                    core::says("has readings that differ by %1; up to %2 is usual for a square "
                               "top without wavy edges.",
                               core::length(spread(readings), reader.unit()),
                               core::length(kSpread, reader.unit())));
}

/// A missing reading is taken from the grid, and so is the size where that was chosen; without a
/// grid it is a problem.
void fillFromGrid(FieldReader& reader, std::string_view key, std::vector<Length>& readings,
                  bool hasGrid, bool byChoice, Length nominal) {
    if (reader.has(key) && !byChoice)
        return;
    if (!hasGrid) {
        reader.stop(key,
                    core::says("is missing; one reading, several, or a grid of blocks is needed."));
    } else if (nominal < limits::kSmallestTop || nominal > limits::kLargestTop) {
        const Sentence is = core::length(nominal, reader.unit()),
                       least = core::length(limits::kSmallestTop, reader.unit()),
                       most = core::length(limits::kLargestTop, reader.unit());
        reader.stop("grid",
                    key == "width"
                        ? core::says("makes a top with a width of %1; %2 to %3 is accepted.", is,
                                     least, most)
                        : core::says("makes a top with a length of %1; %2 to %3 is accepted.", is,
                                     least, most));
    } else {
        readings.assign(1, nominal);
    }
}

/// The borders take up what the grid and the readings differ by; they cannot be narrower than none.
void checkGridFits(FieldReader& reader, const BlockGrid& grid, bool across, Length measured) {
    const Length blocks = across ? grid.blocksWidth() : grid.blocksLength();
    const Length border = across ? grid.border : grid.borderAtEnds();
    const Length nominal = blocks + 2 * border;
    const auto length = [&](Length l) { return core::length(l, reader.unit()); };
    if (blocks > measured)
        reader.stop("grid",
                    across ? core::says("cannot be right: the blocks alone need %1 across, and the "
                                        "top measures %2.",
                                        length(blocks), length(measured))
                           : core::says("cannot be right: the blocks alone need %1 from head to "
                                        "foot, and the top measures %2.",
                                        length(blocks), length(measured)));
    else if (abs(nominal - measured) > kSpread)
        reader.warn(
            "grid",
            across ? core::says("makes %1 across and the top measures %2, so the borders at left "
                                "and right come out %3 wide, not %4.",
                                length(nominal), length(measured), length((measured - blocks) / 2),
                                length(border))
                   : core::says("makes %1 from head to foot and the top measures %2, so the "
                                "borders at head and foot come out %3 wide, not %4.",
                                length(nominal), length(measured), length((measured - blocks) / 2),
                                length(border)));
}

void checkInner(FieldReader& reader, std::string_view which, const std::vector<Length>& lines,
                Length block) {
    for (const Length at : lines)
        if (at >= block)
            reader.stop("grid", core::says("has an inner seam at %1 = %2; less than the block's %3 "
                                           "is accepted.",
                                           which, core::length(at, reader.unit()),
                                           core::length(block, reader.unit())));
}

/// True where there are both diagonals.
bool hasDiagonals(FieldReader& reader, const std::vector<Length>& diagonals) {
    if (diagonals.size() == 1)
        reader.stop("diagonals",
                    core::says("has %1 reading; none or both are accepted.", diagonals.size()));
    return diagonals.size() == 2;
}

// Nothing sewn or cut is so crooked that a diagonal is this far from the rectangle's: one figure is
// wrong.
void checkDiagonalsFit(FieldReader& reader, const std::vector<Length>& diagonals,
                       const Rect& area) {
    const double expected = std::hypot(area.width().in(), area.length().in());
    for (const Length d : diagonals)
        if (std::abs(d.in() - expected) > 4.0) {
            reader.warn("diagonals",
                        core::says("has a reading of %1 while the sides make %2; measure again.",
                                   core::length(d, reader.unit()),
                                   core::length(Length::nearestInches(expected), reader.unit())));
            break;
        }
}

void checkDiagonals(FieldReader& reader, const Top& top) {
    if (!hasDiagonals(reader, top.diagonals))
        return;
    checkSpread(reader, "diagonals", top.diagonals);
    checkDiagonalsFit(reader, top.diagonals, topRect(top));
}

Sentence inWords(Point p, Unit unit) {
    return core::says("(%1, %2)", core::figure(format(p.x, unit, false)),
                      core::figure(format(p.y, unit, false)));
}

void checkSeams(FieldReader& reader, const Top& top) {
    constexpr Length kBeyond = 1_in; // drawn to the nominal size of a top that came out smaller
    const Rect allowed = topRect(top).grown(kBeyond);
    for (std::size_t i = 0; i < top.seams.size(); ++i) {
        const Segment& s = top.seams[i];
        if (s.from == s.to)
            reader.stop("seams", i,
                        core::says("runs from %1 to itself; two different ends are accepted.",
                                   inWords(s.from, reader.unit())));
        else if (!allowed.contains(s.from) || !allowed.contains(s.to))
            reader.stop("seams", i,
                        core::says("runs from %1 to %2; places on the top, or up to %3 beyond it, "
                                   "are accepted.",
                                   inWords(s.from, reader.unit()), inWords(s.to, reader.unit()),
                                   core::length(kBeyond, reader.unit())));
    }
}

/// Inner lines end at every sashing, so their number grows with the blocks.
void checkSeamCount(FieldReader& reader, const BlockGrid& grid) {
    const bool sashed = grid.sashing > Length{};
    const auto runsDown = std::ssize(grid.innerX) * grid.columns * (sashed ? grid.rows : 1);
    const auto runsAcross = std::ssize(grid.innerY) * grid.rows * (sashed ? grid.columns : 1);
    if (runsDown + runsAcross > limits::kSeams)
        reader.stop("grid", core::says("makes %1 seams inside its blocks; up to %2 are accepted.",
                                       runsDown + runsAcross, limits::kSeams));
}

} // namespace

void checkPiece(FieldReader& reader, const BattingPiece& piece) {
    if (hasDiagonals(reader, piece.diagonals))
        checkDiagonalsFit(reader, piece.diagonals, {Length{}, Length{}, piece.width, piece.length});
}

void checkTop(FieldReader& reader, Top& top) {
    // Where fields were refused, comparing them would only blame others.
    const bool sound = reader.sound();
    const auto nominal = top.grid.value_or(BlockGrid{});
    const bool hasGrid = reader.has("grid");
    if (top.sizeFromGrid && !hasGrid) {
        reader.stop("size_from_grid",
                    core::says("asks for the size of a grid, and there is none."));
        return;
    }
    if (hasGrid && !reader.has("width") && !reader.has("length"))
        top.sizeFromGrid = true;
    if (sound || !hasGrid) {
        fillFromGrid(reader, "width", top.width, hasGrid, top.sizeFromGrid, nominal.width());
        fillFromGrid(reader, "length", top.length, hasGrid, top.sizeFromGrid, nominal.length());
    }
    if (!sound || top.width.empty() || top.length.empty())
        return;
    checkSpread(reader, "width", top.width);
    checkSpread(reader, "length", top.length);
    checkDiagonals(reader, top);
    if (top.grid) {
        const Rect area = topRect(top);
        checkGridFits(reader, *top.grid, true, area.width());
        checkGridFits(reader, *top.grid, false, area.length());
        checkInner(reader, "x", top.grid->innerX, top.grid->block);
        checkInner(reader, "y", top.grid->innerY, top.grid->blockHeight());
        checkSeamCount(reader, *top.grid);
    }
    checkSeams(reader, top);
}

} // namespace bastewright
