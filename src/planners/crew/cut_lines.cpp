#include "planners/crew/cut_lines.h"

#include <algorithm>
#include <set>

namespace bastewright::crew {
namespace {

/// Points along one axis, ascending.
std::vector<Length> coordinates(std::span<const PlacedPoint> points, bool alongX) {
    std::vector<Length> out;
    for (const PlacedPoint& p : points)
        out.push_back(alongX ? p.at.x : p.at.y);
    std::ranges::sort(out);
    return out;
}

std::set<Length> inWidestGaps(const std::vector<Length>& at, Length spacing) {
    struct Gap {
        Length size, middle;
    };
    std::vector<Gap> gaps;
    for (std::size_t k = 1; k < at.size(); ++k)
        if (at[k] > at[k - 1])
            gaps.push_back({at[k] - at[k - 1], at[k - 1] + (at[k] - at[k - 1]) / 2});
    // The widest first; none so near to another that what lies between is no row.
    std::ranges::stable_sort(gaps, std::greater{}, &Gap::size);
    const Length apart = spacing * 35 / 100;
    std::set<Length> lines;
    for (const Gap& g : gaps) {
        const auto after = lines.lower_bound(g.middle);
        if ((after == lines.end() || *after - g.middle >= apart) &&
            (after == lines.begin() || g.middle - *std::prev(after) >= apart))
            lines.insert(g.middle);
    }
    return lines;
}

/// Where a row or a mark is meant to be, and where its pins lie.
struct Line {
    Length meant, lo, hi;
};

/// Rows, or the marks of both ribbons, that have points here, ascending.
std::vector<Line> linesOf(std::span<const PlacedPoint> points, bool alongX, const PinRows& rows) {
    const bool acrossRows = (rows.along == PinRows::Along::width) != alongX;
    const RowMarks marks{rows};
    std::map<Length, Line> lines;
    for (const PlacedPoint& p : points) {
        const auto mark = marks.of(p.at);
        if (!mark)
            continue; // a single pin stands in no row
        const auto row = static_cast<std::size_t>(mark->row) - 1;
        const Length meant = acrossRows
                                 ? rows.ribbons.side[row]
                                 : marksOf(rows, row)[static_cast<std::size_t>(mark->mark) - 1];
        const Length at = alongX ? p.at.x : p.at.y;
        Line& line = lines.try_emplace(meant, Line{meant, at, at}).first->second;
        line.lo = std::min(line.lo, at);
        line.hi = std::max(line.hi, at);
    }
    std::vector<Line> out;
    for (const auto& [meant, line] : lines) {
        // Two marks nearer to each other than a hand is exact are one.
        constexpr Length kAlike = Length::inch64ths(16);
        if (!out.empty() && meant - out.back().meant < kAlike) {
            out.back().lo = std::min(out.back().lo, line.lo);
            out.back().hi = std::max(out.back().hi, line.hi);
        } else {
            out.push_back(line);
        }
    }
    return out;
}

std::set<Length> betweenRows(const std::vector<Line>& lines) {
    std::vector<Length> from(lines.size()); // lowest point of this line and of all after it
    for (std::size_t k = lines.size(); k-- > 0;)
        from[k] = k + 1 < lines.size() ? std::min(lines[k].lo, from[k + 1]) : lines[k].lo;
    Length to = lines.empty() ? Length{} : lines.front().hi; // highest point so far
    std::set<Length> out;
    for (std::size_t k = 1; k < lines.size(); ++k) {
        const Interval meant{lines[k - 1].meant, lines[k].meant};
        to = std::max(to, lines[k - 1].hi);
        const bool apart = to < from[k] && (meant.middle() <= to || meant.middle() >= from[k]);
        out.insert(apart ? Interval{to, from[k]}.middle() : meant.middle());
    }
    return out;
}

} // namespace

std::vector<Length> cutLines(Interval area, std::span<const PlacedPoint> points, bool alongX,
                             Length spacing, const PinRows* rows) {
    const std::vector<Length> at = coordinates(points, alongX);
    const auto before = [&](Length line) {
        return std::ranges::lower_bound(at, line) - at.begin();
    };
    std::vector<Length> out{area.lo};
    for (const Length line :
         rows != nullptr ? betweenRows(linesOf(points, alongX, *rows)) : inWidestGaps(at, spacing))
        if (line > area.lo && line < area.hi && before(line) < std::ssize(at) &&
            before(line) > (out.size() == 1 ? 0 : before(out.back())))
            out.push_back(line);
    if (area.hi > area.lo)
        out.push_back(area.hi);
    return out;
}

} // namespace bastewright::crew
