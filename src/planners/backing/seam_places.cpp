#include "planners/backing/seam_places.h"

#include <algorithm>

namespace bastewright::backing {
namespace {

/// Sorted, disjoint, closed.
using Places = std::vector<Interval>;

Places joined(Places parts) {
    std::ranges::sort(parts);
    Places out;
    for (const Interval p : parts) {
        if (!out.empty() && p.lo <= out.back().hi)
            out.back().hi = std::max(out.back().hi, p.hi);
        else
            out.push_back(p);
    }
    return out;
}

/// Without the open neighbourhoods of the lines: a seam at exactly `clear` is allowed.
Places without(Places places, std::span<const KeepAway> lines) {
    for (const KeepAway line : lines) {
        Places kept;
        const Length lo = line.at - line.clear, hi = line.at + line.clear;
        for (const Interval p : places) {
            if (p.lo <= std::min(p.hi, lo))
                kept.push_back({p.lo, std::min(p.hi, lo)});
            if (std::max(p.lo, hi) <= p.hi)
                kept.push_back({std::max(p.lo, hi), p.hi});
        }
        places = joined(std::move(kept));
    }
    return places;
}

Places after(const Places& places, StripRange strip) {
    Places out;
    for (const Interval p : places)
        out.push_back({p.lo + strip.least, p.hi + strip.most});
    return joined(std::move(out));
}

/// Places of the seam behind each of some strips from an edge, the last of them.
Places behind(std::span<const StripRange> strips, std::span<const KeepAway> lines) {
    Places at{{Interval{}}};
    for (const StripRange& s : strips)
        at = without(after(at, s), lines);
    return at;
}

} // namespace

std::optional<Length> leastSize(std::span<const StripRange> strips, std::size_t which, Length total,
                                std::span<const KeepAway> lines) {
    for (std::size_t i = 0; i < strips.size(); ++i)
        if (i != which && strips[i].most < strips[i].least)
            return std::nullopt;
    const Places first = behind(strips.first(which), lines);
    // From the other edge, as the same strips and lines seen in a mirror.
    std::vector<StripRange> others(strips.rbegin(), strips.rend() - std::ptrdiff_t(which) - 1);
    std::vector<KeepAway> mirrored;
    for (const KeepAway& l : lines)
        mirrored.push_back({total - l.at, l.clear});
    const Places last = behind(others, mirrored);
    std::optional<Length> best;
    for (const Interval a : first)
        for (const Interval b : last) {
            const Length narrowest = total - a.hi - b.hi, widest = total - a.lo - b.lo;
            const Length size = std::max(narrowest, strips[which].least);
            if (size <= widest && (!best || size < *best))
                best = size;
        }
    return best;
}

std::optional<std::vector<Length>> placeSeams(std::span<const StripRange> strips, Length total,
                                              std::span<const KeepAway> lines,
                                              std::span<const Length> wanted) {
    if (std::ranges::any_of(strips, [](StripRange s) { return s.most < s.least; }))
        return std::nullopt;
    std::vector<Places> reach{{Interval{}}};
    for (std::size_t i = 0; i + 1 < strips.size(); ++i)
        reach.push_back(without(after(reach.back(), strips[i]), lines));
    const Places ends = after(reach.back(), strips.back());
    if (std::ranges::none_of(ends, [&](Interval p) { return p.contains(total); }))
        return std::nullopt;

    std::vector<Length> seams(strips.size() - 1);
    Length next = total;
    for (std::size_t i = seams.size(); i-- > 0;) {
        const Interval window{next - strips[i + 1].most, next - strips[i + 1].least};
        std::optional<Length> best;
        for (const Interval p : reach[i + 1]) {
            const Interval open = intersection(p, window);
            if (open.hi < open.lo)
                continue;
            const Length at = std::clamp(wanted[i], open.lo, open.hi);
            if (!best || abs(at - wanted[i]) < abs(*best - wanted[i]))
                best = at;
        }
        next = seams[i] = *best; // some place leads here, else `total` were out of reach
    }
    return seams;
}

} // namespace bastewright::backing
