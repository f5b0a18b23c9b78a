#include "plan/zone_words.h"

#include <algorithm>
#include <limits>
#include <set>

namespace bastewright {
namespace {

constexpr int kEnd = std::numeric_limits<int>::max();

/// Numbers that say the same, because the marks between them are left out in this row.
struct Alike {
    int lo = 1, hi = kEnd;
    bool none() const { return hi < lo; }
};

Alike shared(Alike a, Alike b) {
    return {std::max(a.lo, b.lo), std::min(a.hi, b.hi)};
}

/// Marks of one row that follow one another.
struct Run {
    Alike from, to;
};

std::vector<Run> runsOf(const PinRow& row, const std::vector<Length>& marks,
                        const std::set<int>& here) {
    std::vector<int> all;
    for (const Length place : row.places)
        if (const auto at = std::ranges::lower_bound(marks, place);
            at != marks.end() && *at == place)
            all.push_back(static_cast<int>(at - marks.begin()) + 1);
    std::vector<Run> out;
    bool open = false;
    for (std::size_t k = 0; k < all.size(); ++k) {
        const bool in = here.contains(all[k]);
        if (in && !open)
            out.push_back({{k == 0 ? 1 : all[k - 1] + 1, all[k]}, {}});
        if (in)
            out.back().to = {all[k], k + 1 == all.size() ? kEnd : all[k + 1] - 1};
        open = in;
    }
    return out;
}

/// Rows that are said together, as long as another one fits.
struct Group {
    int first = 1, last = 1;
    std::vector<Run> odd{}, even{}; ///< empty: no such row yet

    bool take(int row, const std::vector<Run>& runs) {
        auto& own = row % 2 == 1 ? odd : even;
        const auto& other = row % 2 == 1 ? even : odd;
        if ((!own.empty() && own.size() != runs.size()) ||
            (!other.empty() && other.size() != runs.size()))
            return false;
        std::vector<Run> both = runs;
        for (std::size_t k = 0; k < own.size(); ++k) {
            both[k] = {shared(own[k].from, runs[k].from), shared(own[k].to, runs[k].to)};
            if (both[k].from.none() || both[k].to.none())
                return false;
        }
        own = std::move(both);
        last = row;
        return true;
    }
};

std::optional<int> start(Alike from) {
    return from.lo == 1 ? std::nullopt : std::optional{from.hi};
}

std::optional<int> end(Alike to) {
    return to.hi == kEnd ? std::nullopt : std::optional{to.lo};
}

RowsPart part(const Group& g, std::size_t k) {
    RowsPart out{g.first, g.last, {}, {}};
    const Run odd = g.odd.empty() ? g.even[k] : g.odd[k];
    const Run even = g.even.empty() ? odd : g.even[k];
    const Alike from = shared(odd.from, even.from), to = shared(odd.to, even.to);
    out.odd = {start(from.none() ? odd.from : from), end(to.none() ? odd.to : to)};
    out.even = {start(from.none() ? even.from : from), end(to.none() ? even.to : to)};
    return out;
}

/// What is least to remember: few parts, and of as few those in which even rows differ.
std::vector<RowsPart> told(const std::vector<std::vector<Run>>& runs) {
    struct Best {
        std::size_t cost = 0;
        std::size_t from = 0; ///< the first row of the last group
        std::optional<Group> last{};
    };
    std::vector<Best> best(runs.size() + 1);
    for (std::size_t end = 1; end <= runs.size(); ++end) {
        if (runs[end - 1].empty()) {
            best[end] = {best[end - 1].cost, end - 1, {}};
            continue;
        }
        best[end].cost = std::numeric_limits<std::size_t>::max();
        for (std::size_t from = end; from-- > 0 && !runs[from].empty();) {
            const int first = static_cast<int>(from) + 1;
            Group group{first, first, {}, {}};
            bool fits = true;
            for (std::size_t i = from; i < end && fits; ++i)
                fits = group.take(static_cast<int>(i) + 1, runs[i]);
            if (!fits)
                break;
            std::size_t cost = best[from].cost;
            for (std::size_t k = 0; k < runs[from].size(); ++k)
                cost += part(group, k).odd == part(group, k).even ? 2 : 3;
            if (cost <= best[end].cost)
                best[end] = {cost, from, std::move(group)};
        }
    }
    std::vector<RowsPart> out;
    for (std::size_t end = runs.size(); end > 0; end = best[end].from)
        if (const auto& group = best[end].last)
            for (std::size_t k = std::max(group->odd.size(), group->even.size()); k-- > 0;)
                out.push_back(part(*group, k));
    std::ranges::reverse(out);
    return out;
}

Sentence said(const RowsPart& p, const PinRows& rows) {
    const Sentence which = p.first == p.last ? core::says("row %1", p.first)
                                             : core::says("rows %1–%2", p.first, p.last);
    const MarkSpan odd = p.odd, even = p.even;
    if (odd == even) {
        if (odd.from && odd.to)
            return *odd.from == *odd.to ? core::says("%1, mark %2", which, *odd.from)
                                        : core::says("%1, marks %2–%3", which, *odd.from, *odd.to);
        if (odd.to)
            return core::says("%1 as far as mark %2", which, *odd.to);
        return odd.from ? core::says("%1 from mark %2 on", which, *odd.from) : which;
    }
    const auto first = [](MarkSpan s) { return s.from.value_or(1); };
    const auto last = [](MarkSpan s, const std::vector<Length>& marks) {
        return s.to.value_or(static_cast<int>(marks.size()));
    };
    const int oddEnd = last(odd, rows.ribbons.odd), evenEnd = last(even, rows.ribbons.even);
    if (!odd.from && !even.from)
        return core::says("%1 as far as mark %2 (even rows: mark %3)", which, oddEnd, evenEnd);
    if (!odd.to && !even.to)
        return core::says("%1 from mark %2 on (even rows: from mark %3)", which, first(odd),
                          first(even));
    return core::says("%1, marks %2–%3 (even rows: %4–%5)", which, first(odd), oddEnd, first(even),
                      evenEnd);
}

} // namespace

std::vector<RowsPart> rowsOf(const Zone& zone, const PinRows& rows) {
    const RowMarks marks{rows};
    std::vector<std::set<int>> here(rows.lines.size());
    for (const PlacedPoint& p : zone.points)
        if (const auto mark = marks.of(p.at))
            here[static_cast<std::size_t>(mark->row) - 1].insert(mark->mark);
    std::vector<std::vector<Run>> runs;
    for (std::size_t i = 0; i < rows.lines.size(); ++i)
        runs.push_back(runsOf(rows.lines[i], marksOf(rows, i), here[i]));
    return told(runs);
}

Sentences rowsPartsWords(const Zone& zone, const PinRows& rows) {
    Sentences out;
    for (const RowsPart& p : rowsOf(zone, rows))
        out.push_back(said(p, rows));
    return out;
}

} // namespace bastewright
