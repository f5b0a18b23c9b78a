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
        reader.warn(key, "has readings that differ by " + format(spread(readings), reader.unit()) +
                             "; up to " + format(kSpread, reader.unit()) +
                             " is usual for a square top without wavy edges.");
}

/// A missing reading is taken from the grid; without a grid it is a problem.
void fillFromGrid(FieldReader& reader, std::string_view key, std::vector<Length>& readings,
                  bool hasGrid, Length nominal) {
    if (reader.has(key))
        return;
    if (!hasGrid) {
        reader.stop(key, "is missing; one reading, several, or a grid of blocks is needed.");
    } else if (nominal < limits::kSmallestTop || nominal > limits::kLargestTop) {
        reader.stop("grid", "makes a top with a " + std::string{key} + " of " +
                                format(nominal, reader.unit()) + "; " +
                                format(limits::kSmallestTop, reader.unit()) + " to " +
                                format(limits::kLargestTop, reader.unit()) + " is accepted.");
    } else {
        readings.assign(1, nominal);
    }
}

void checkGridFits(FieldReader& reader, const BlockGrid& grid, std::string_view key, Length nominal,
                   Length measured) {
    const Unit unit = reader.unit();
    const auto sizes = "adds up to a " + std::string{key} + " of " + format(nominal, unit) +
                       " while the top measures " + format(measured, unit);
    // The borders take up the difference (seamsOf), so both together are the most it can be.
    if (nominal - measured > 2 * grid.border)
        reader.stop("grid", sizes + "; up to " + format(measured + 2 * grid.border, unit) +
                                " is accepted with these borders.");
    else if (abs(nominal - measured) > kSpread)
        reader.warn("grid", sizes + "; the difference is taken up by the borders.");
}

void checkInner(FieldReader& reader, std::string_view which, const std::vector<Length>& lines,
                Length block) {
    for (const Length at : lines)
        if (at >= block)
            reader.stop("grid", "has an inner seam at " + std::string{which} + " = " +
                                    format(at, reader.unit()) + "; less than the block's " +
                                    format(block, reader.unit()) + " is accepted.");
}

void checkDiagonals(FieldReader& reader, const Top& top) {
    if (top.diagonals.empty())
        return;
    if (top.diagonals.size() != 2) {
        reader.stop("diagonals", "has " + std::to_string(top.diagonals.size()) +
                                     " reading; none or both are accepted.");
        return;
    }
    checkSpread(reader, "diagonals", top.diagonals);
    // No quilt is so crooked that a diagonal is this far from the rectangle's: one figure is wrong.
    const Rect area = topRect(top);
    const double expected = std::hypot(area.width().in(), area.length().in());
    for (const Length d : top.diagonals)
        if (std::abs(d.in() - expected) > 4.0) {
            reader.warn("diagonals", "has a reading of " + format(d, reader.unit()) +
                                         " while the sides make " +
                                         format(Length::nearestInches(expected), reader.unit()) +
                                         "; measure again.");
            break;
        }
}

std::string inWords(Point p, Unit unit) {
    std::string out{"("};
    return out.append(format(p.x, unit, false))
        .append(", ")
        .append(format(p.y, unit, false))
        .append(")");
}

void checkSeams(FieldReader& reader, const Top& top) {
    constexpr Length kBeyond = 1_in; // drawn to the nominal size of a top that came out smaller
    const Rect allowed = topRect(top).grown(kBeyond);
    for (std::size_t i = 0; i < top.seams.size(); ++i) {
        const Segment& s = top.seams[i];
        if (s.from == s.to)
            reader.stop("seams", i,
                        "runs from " + inWords(s.from, reader.unit()) +
                            " to itself; two different ends are accepted.");
        else if (!allowed.contains(s.from) || !allowed.contains(s.to))
            reader.stop("seams", i,
                        "runs from " + inWords(s.from, reader.unit()) + " to " +
                            inWords(s.to, reader.unit()) + "; places on the top, or up to " +
                            format(kBeyond, reader.unit()) + " beyond it, are accepted.");
    }
}

/// Inner lines end at every sashing, so their number grows with the blocks.
void checkSeamCount(FieldReader& reader, const BlockGrid& grid) {
    const bool sashed = grid.sashing > Length{};
    const auto runsDown = std::ssize(grid.innerX) * grid.columns * (sashed ? grid.rows : 1);
    const auto runsAcross = std::ssize(grid.innerY) * grid.rows * (sashed ? grid.columns : 1);
    if (runsDown + runsAcross > limits::kSeams)
        reader.stop("grid", "makes " + std::to_string(runsDown + runsAcross) +
                                " seams inside its blocks; up to " +
                                std::to_string(limits::kSeams) + " are accepted.");
}

} // namespace

void checkTop(FieldReader& reader, Top& top) {
    // Where fields were refused, comparing them would only blame others.
    const bool sound = reader.sound();
    const auto nominal = top.grid.value_or(BlockGrid{});
    const bool hasGrid = reader.has("grid");
    if (sound || !hasGrid) {
        fillFromGrid(reader, "width", top.width, hasGrid, nominal.width());
        fillFromGrid(reader, "length", top.length, hasGrid, nominal.length());
    }
    if (!sound || top.width.empty() || top.length.empty())
        return;
    checkSpread(reader, "width", top.width);
    checkSpread(reader, "length", top.length);
    checkDiagonals(reader, top);
    if (top.grid) {
        const Rect area = topRect(top);
        checkGridFits(reader, *top.grid, "width", top.grid->width(), area.width());
        checkGridFits(reader, *top.grid, "length", top.grid->length(), area.length());
        checkInner(reader, "x", top.grid->innerX, top.grid->block);
        checkInner(reader, "y", top.grid->innerY, top.grid->blockHeight());
        checkSeamCount(reader, *top.grid);
    }
    checkSeams(reader, top);
}

} // namespace bastewright
