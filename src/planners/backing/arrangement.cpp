#include "planners/backing/arrangement.h"

#include "planners/backing/seam_places.h"

#include <algorithm>
#include <ranges>

namespace bastewright::backing {
namespace {

std::vector<Strip> stripsOf(const std::vector<Bolt>& bolts, const Layout& layout) {
    std::vector<Strip> out;
    for (std::size_t b = 0; b < bolts.size(); ++b) {
        int whole = layout.lengths[b];
        if (layout.splitBolt == int(b)) {
            --whole;
            out.insert(out.end(), 2, Strip{int(b), bolts[b].width / 2, true});
        }
        out.insert(out.end(), std::size_t(whole), Strip{int(b), bolts[b].width, false});
    }
    if (layout.column)
        out.push_back({-1, layout.column->width, false});
    std::ranges::sort(out);
    return out;
}

std::vector<KeepAway> linesOf(const Problem& problem, const Layout& layout, bool keepAway) {
    std::vector<KeepAway> lines;
    if (!problem.rules.centreSeam)
        lines.push_back({problem.across(layout.along) / 2, kClear});
    if (keepAway)
        for (const Segment& s : problem.keepAway) {
            if (layout.along && s.from.x == s.to.x)
                lines.push_back({s.from.x, kClear});
            if (!layout.along && s.from.y == s.to.y)
                lines.push_back({s.from.y, kClear});
        }
    return lines;
}

/// A whole length that is narrower than the rule is sewn in as it is; a half of one, or a column,
/// never.
std::vector<StripRange> rangesOf(const Problem& problem, const std::vector<Strip>& strips) {
    std::vector<StripRange> out;
    for (std::size_t i = 0; i < strips.size(); ++i) {
        const int sides = (i > 0) + (i + 1 < strips.size());
        const Length least =
            sides < 2 && strips.size() > 1 ? problem.leastOutside() : problem.leastInside();
        const Length most = strips[i].most - sides * problem.rules.seam;
        const bool whole = strips[i].bolt >= 0 && !strips[i].flank;
        out.push_back({strips.size() == 1 ? Length{}
                       : whole            ? std::min(least, most)
                                          : least,
                       most});
    }
    return out;
}

/// Two strips: the first full. More: the inner ones full, the outer two share the rest.
std::vector<Length> wantedSeams(const std::vector<StripRange>& ranges, Length total) {
    std::vector<Length> out;
    if (ranges.size() == 2)
        return {ranges[0].most};
    Length inner;
    for (std::size_t i = 1; i + 1 < ranges.size(); ++i)
        inner += ranges[i].most;
    Length at = (total - inner) / 2;
    for (std::size_t i = 0; i + 1 < ranges.size(); ++i) {
        out.push_back(at);
        if (i + 2 < ranges.size())
            at += ranges[i + 1].most;
    }
    return out;
}

/// How far an arrangement is from the usual one; less is better.
int oddness(const Arrangement& a, Length total) {
    const std::size_t n = a.strips.size();
    const auto edge = [&](std::size_t i) {
        return i == 0 ? Length{} : i == n ? total : a.seams[i - 1];
    };
    int odd = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const Strip& s = a.strips[i];
        const bool outer = i == 0 || i + 1 == n;
        if (s.bolt < 0)
            odd += (outer ? 16 : 0) + (edge(i) < total / 2 && total / 2 < edge(i + 1) ? 2 : 0);
        if (s.flank && !outer)
            odd += 4;
        const Strip& facing = a.strips[n - 1 - i];
        const bool alike = s.bolt == facing.bolt && s.flank == facing.flank &&
                           edge(i + 1) - edge(i) == edge(n - i) - edge(n - 1 - i);
        odd += !alike;
    }
    return odd;
}

} // namespace

std::optional<Arrangement> arrange(const Problem& problem, const std::vector<Bolt>& bolts,
                                   const Layout& layout, bool keepAway) {
    const Length total = problem.across(layout.along);
    std::optional<ColumnJoins> joins{std::in_place};
    if (layout.column && layout.column->fabric >= 0)
        joins = joinsOf(problem, *layout.column, problem.height(layout.along));
    if (!joins)
        return std::nullopt;
    const std::vector<KeepAway> lines = linesOf(problem, layout, keepAway);
    std::vector<Strip> strips = stripsOf(bolts, layout);
    std::optional<Arrangement> best;
    int bestOdd = 0;
    do {
        const auto ranges = rangesOf(problem, strips);
        auto seams = placeSeams(ranges, total, lines, wantedSeams(ranges, total));
        if (!seams)
            continue;
        Arrangement a{strips, std::move(*seams), {}};
        const int odd = oddness(a, total);
        if (!best || odd < bestOdd) {
            best = std::move(a);
            bestOdd = odd;
        }
    } while (std::ranges::next_permutation(strips).found);
    if (best)
        best->joins = std::move(*joins);
    return best;
}

std::vector<ColumnWidth> columnWidths(const Problem& problem, const std::vector<Bolt>& bolts,
                                      const Layout& layout) {
    const Length total = problem.across(layout.along), seam = problem.rules.seam;
    const std::vector<KeepAway> lines = linesOf(problem, layout, false);
    Layout with = layout;
    with.column = Column{};
    std::vector<Strip> strips = stripsOf(bolts, with);
    std::optional<Length> inside, outside;
    do {
        const auto column =
            std::size_t(std::ranges::find(strips, -1, &Strip::bolt) - strips.begin());
        const int sides = (column > 0) + (column + 1 < strips.size());
        const auto size = leastSize(rangesOf(problem, strips), column, total, lines);
        if (!size)
            continue;
        std::optional<Length>& least = sides == 2 ? inside : outside;
        const Length width = *size + sides * seam;
        least = std::min(least.value_or(width), width);
    } while (std::ranges::next_permutation(strips).found);
    std::vector<ColumnWidth> out;
    if (inside)
        out.push_back({*inside, false});
    if (outside && (!inside || *outside < *inside))
        out.push_back({*outside, true});
    return out;
}

} // namespace bastewright::backing
