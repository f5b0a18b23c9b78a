#include "job/fields/top_checks.h"

#include "job/job_json.h"
#include "job/squareness.h"

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

void checkSpread(FieldReports& reports, std::string_view key, const std::vector<Length>& readings) {
    if (readings.size() > 1 && spread(readings) > kSquareEnough)
        reports.warn(key,
                     core::says("has readings that differ by %1; up to %2 is usual for a square "
                                "top without wavy edges.",
                                core::length(spread(readings), reports.unit()),
                                core::length(kSquareEnough, reports.unit())));
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
void checkGridFits(FieldReports& reports, const BlockGrid& grid, bool across, Length measured) {
    const Length blocks = across ? grid.blocksWidth() : grid.blocksLength();
    const Length border = across ? grid.border : grid.borderAtEnds();
    const Length nominal = blocks + 2 * border;
    const auto length = [&](Length l) { return core::length(l, reports.unit()); };
    if (blocks > measured)
        reports.stop(
            "grid", across ? core::says("cannot be right: the blocks alone need %1 across, and the "
                                        "top measures %2.",
                                        length(blocks), length(measured))
                           : core::says("cannot be right: the blocks alone need %1 from head to "
                                        "foot, and the top measures %2.",
                                        length(blocks), length(measured)));
    else if (abs(nominal - measured) > kSquareEnough)
        reports.warn(
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

void checkInner(FieldReports& reports, std::string_view which, const std::vector<Length>& lines,
                Length block) {
    for (const Length at : lines)
        if (at >= block)
            reports.stop("grid",
                         core::says("has an inner seam at %1 = %2; less than the block's %3 "
                                    "is accepted.",
                                    which, core::length(at, reports.unit()),
                                    core::length(block, reports.unit())));
}

// Nothing sewn or cut is so crooked that a diagonal is this far from the rectangle's: one figure is
// wrong.
void checkDiagonalsFit(FieldReports& reports, const std::vector<Length>& diagonals,
                       const Rect& area) {
    const double expected = std::hypot(area.width().in(), area.length().in());
    for (const Length d : diagonals)
        if (std::abs(d.in() - expected) > 4.0) {
            reports.warn("diagonals",
                         core::says("has a reading of %1 while the sides make %2; measure again.",
                                    core::length(d, reports.unit()),
                                    core::length(Length::nearestInches(expected), reports.unit())));
            break;
        }
}

void checkDiagonals(FieldReports& reports, const Top& top) {
    if (top.diagonals.size() != 2)
        return;
    checkSpread(reports, "diagonals", top.diagonals);
    checkDiagonalsFit(reports, top.diagonals, topRect(top));
}

Sentence inWords(Point p, Unit unit) {
    return core::says("(%1, %2)", core::figure(format(p.x, unit, false)),
                      core::figure(format(p.y, unit, false)));
}

void checkSeams(FieldReports& reports, const Top& top) {
    constexpr Length kBeyond = 1_in; // drawn to the nominal size of a top that came out smaller
    const Rect allowed = topRect(top).grown(kBeyond);
    for (std::size_t i = 0; i < top.seams.size(); ++i) {
        const Segment& s = top.seams[i];
        if (s.from == s.to)
            reports.stop("seams", i,
                         core::says("runs from %1 to itself; two different ends are accepted.",
                                    inWords(s.from, reports.unit())));
        else if (!allowed.contains(s.from) || !allowed.contains(s.to))
            reports.stop("seams", i,
                         core::says("runs from %1 to %2; places on the top, or up to %3 beyond it, "
                                    "are accepted.",
                                    inWords(s.from, reports.unit()), inWords(s.to, reports.unit()),
                                    core::length(kBeyond, reports.unit())));
    }
}

/// Inner lines end at every sashing, so their number grows with the blocks.
void checkSeamCount(FieldReports& reports, const BlockGrid& grid) {
    const bool sashed = grid.sashing > Length{};
    const auto runsDown = std::ssize(grid.innerX) * grid.columns * (sashed ? grid.rows : 1);
    const auto runsAcross = std::ssize(grid.innerY) * grid.rows * (sashed ? grid.columns : 1);
    if (runsDown + runsAcross > limits::kSeams)
        reports.stop("grid", core::says("makes %1 seams inside its blocks; up to %2 are accepted.",
                                        runsDown + runsAcross, limits::kSeams));
}

} // namespace

void checkPiece(FieldReports& reports, const BattingPiece& piece) {
    if (piece.diagonals.size() == 2)
        checkDiagonalsFit(reports, piece.diagonals,
                          {Length{}, Length{}, piece.width, piece.length});
}

bool fillTop(FieldReader& reader, Top& top) {
    // Where fields were refused, comparing them would only blame others.
    const bool sound = reader.sound();
    const auto nominal = top.grid.value_or(BlockGrid{});
    const bool hasGrid = reader.has("grid");
    if (top.sizeFromGrid && !hasGrid) {
        reader.stop("size_from_grid",
                    core::says("asks for the size of a grid, and there is none."));
        return false;
    }
    if (hasGrid && !reader.has("width") && !reader.has("length"))
        top.sizeFromGrid = true;
    if (sound || !hasGrid) {
        fillFromGrid(reader, "width", top.width, hasGrid, top.sizeFromGrid, nominal.width());
        fillFromGrid(reader, "length", top.length, hasGrid, top.sizeFromGrid, nominal.length());
    }
    return sound && !top.width.empty() && !top.length.empty();
}

void checkTop(FieldReports& reports, const Top& top) {
    checkSpread(reports, "width", top.width);
    checkSpread(reports, "length", top.length);
    checkDiagonals(reports, top);
    if (top.grid) {
        const Rect area = topRect(top);
        checkGridFits(reports, *top.grid, true, area.width());
        checkGridFits(reports, *top.grid, false, area.length());
        checkInner(reports, "x", top.grid->innerX, top.grid->block);
        checkInner(reports, "y", top.grid->innerY, top.grid->blockHeight());
        checkSeamCount(reports, *top.grid);
    }
    checkSeams(reports, top);
}

} // namespace bastewright
