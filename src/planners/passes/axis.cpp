#include "planners/passes/axis.h"

#include <algorithm>

namespace bastewright {
namespace {

/// The highest place at which the first line after a cut is inside the field.
Length highestPlace(const AxisLines& lines, const AxisTable& table, std::size_t lo) {
    const std::size_t line = std::min(lines.cuts[lo].before, lines.at.size() - 1);
    const Length inside = lines.at[line] - table.insetLo;
    return lo == 0 ? std::max(-table.pastLo, inside) : inside;
}

Length lowestPlace(const AxisLines& lines, const AxisTable& table, std::size_t hi) {
    const std::size_t before = std::max<std::size_t>(lines.cuts[hi].before, 1);
    const Length inside = lines.at[before - 1] + table.insetHi - table.size;
    return hi == lines.last() ? std::min(lines.quilt + table.pastHi - table.size, inside) : inside;
}

/// Lines of points below the field of a table at a place, and below its end.
std::size_t linesBelow(const AxisLines& lines, Length at) {
    return static_cast<std::size_t>(std::ranges::lower_bound(lines.at, at) - lines.at.begin());
}
std::size_t linesUpTo(const AxisLines& lines, Length at) {
    return static_cast<std::size_t>(std::ranges::upper_bound(lines.at, at) - lines.at.begin());
}

std::size_t lowCut(const AxisLines& lines, const AxisTable& table, Length at) {
    if (at <= -table.pastLo)
        return 0;
    const std::size_t below = linesBelow(lines, at + table.insetLo);
    const auto cut = std::ranges::lower_bound(lines.cuts, below, {}, &Cut::before);
    return static_cast<std::size_t>(cut - lines.cuts.begin());
}

std::size_t highCut(const AxisLines& lines, const AxisTable& table, Length at) {
    if (at + table.size >= lines.quilt + table.pastHi)
        return lines.last();
    const std::size_t within = linesUpTo(lines, at + table.size - table.insetHi);
    const auto cut = std::ranges::upper_bound(lines.cuts, within, {}, &Cut::before);
    return static_cast<std::size_t>(cut - lines.cuts.begin()) - 1;
}

} // namespace

Interval placesFor(const AxisLines& lines, const AxisTable& table, std::size_t lo, std::size_t hi) {
    return {lowestPlace(lines, table, hi), highestPlace(lines, table, lo)};
}

Length anchorBelow(const AxisLines& lines, const AxisTable& table, std::size_t cut) {
    const std::size_t before = lines.cuts[cut].before;
    const Length row = before == 0 ? Length{} : lines.cuts[cut].at - lines.at[before - 1];
    return std::max(table.anchor, row);
}

Length anchorAbove(const AxisLines& lines, const AxisTable& table, std::size_t cut) {
    const std::size_t before = lines.cuts[cut].before;
    const Length row = before >= lines.at.size() ? Length{} : lines.at[before] - lines.cuts[cut].at;
    return std::max(table.anchor, row);
}

std::optional<AxisWindow> windowAt(const AxisLines& lines, const AxisTable& table, Length at) {
    AxisWindow out{lowCut(lines, table, at), highCut(lines, table, at), at};
    if (out.lo >= out.hi)
        return {};
    const std::size_t last = lines.last();
    if (out.lo == 0 && out.hi < last && lines.quilt - (at + table.size) <= table.row) {
        out.hi = last;
        out.pulled = true;
    } else if (out.hi == last && out.lo > 0 && at <= table.row) {
        out.lo = 0;
        out.pulled = true;
    }
    return out;
}

bool fits(const AxisLines& lines, const AxisTable& table) {
    const AxisWindow low = lowEnd(lines, table);
    return low.lo == 0 && low.hi == lines.last();
}

AxisWindow lowEnd(const AxisLines& lines, const AxisTable& table) {
    const Interval whole = placesFor(lines, table, 0, lines.last());
    const Length at = whole.lo <= whole.hi
                          ? std::clamp((lines.quilt - table.size) / 2, whole.lo, whole.hi)
                          : whole.hi;
    return windowAt(lines, table, at).value_or(AxisWindow{0, 0, at});
}

AxisWindow highEnd(const AxisLines& lines, const AxisTable& table) {
    const Interval whole = placesFor(lines, table, 0, lines.last());
    if (whole.lo <= whole.hi)
        return lowEnd(lines, table);
    return windowAt(lines, table, whole.lo)
        .value_or(AxisWindow{lines.last(), lines.last(), whole.lo});
}

std::vector<AxisWindow> outwardFrom(const AxisLines& lines, const AxisTable& toLow,
                                    const AxisTable& toHigh, const AxisWindow& first) {
    std::vector<AxisWindow> out{first};
    const AxisWindow low = lowEnd(lines, toLow), high = highEnd(lines, toHigh);
    for (std::size_t hi = first.hi; hi < lines.last();) {
        const Length anchor = toHigh.anchor > Length{} ? anchorBelow(lines, toHigh, hi) : Length{};
        auto next = windowAt(lines, toHigh, lines.cuts[hi].at - anchor);
        if (!next || next->hi <= hi)
            return {};
        if (next->hi == lines.last())
            next = high;
        hi = next->hi;
        out.push_back(*next);
    }
    for (std::size_t lo = first.lo; lo > 0;) {
        const Length anchor = toLow.anchor > Length{} ? anchorAbove(lines, toLow, lo) : Length{};
        auto next = windowAt(lines, toLow, lines.cuts[lo].at + anchor - toLow.size);
        if (!next || next->lo >= lo)
            return {};
        if (next->lo == 0)
            next = low;
        lo = next->lo;
        out.push_back(*next);
    }
    return out;
}

std::vector<AxisWindow> holding(const AxisLines& lines, const AxisTable& table, Interval stretch) {
    const std::size_t lo = cutBefore(lines, stretch.lo);
    const auto after = std::ranges::lower_bound(lines.cuts, stretch.hi, {}, &Cut::at);
    const auto hi =
        std::min<std::size_t>(static_cast<std::size_t>(after - lines.cuts.begin()), lines.last());
    const Interval places = placesFor(lines, table, lo, hi);
    std::vector<AxisWindow> out;
    if (places.lo > places.hi)
        return out;
    for (const Length at : {places.lo, places.hi, places.middle()})
        if (const auto w = windowAt(lines, table, at))
            out.push_back(*w);
    return out;
}

} // namespace bastewright
