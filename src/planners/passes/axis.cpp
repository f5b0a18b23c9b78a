#include "planners/passes/axis.h"

#include <optional>

namespace bastewright {
namespace {

Length step(const AxisRoom& r) {
    return r.field - r.anchor;
}

/// Runs on one side of the first, from its edge at 0 outward to `end`, each at most `longest`, with
/// near equal basting in each (the last also bastes the row before it), on seams where possible.
/// Returns the outer ends, the last is `end`.
///
/// Dynamic programming over the boundaries: candidates are the even positions, exact and
/// to the eighth below, and every seam that can be reached; off-seam boundaries cost most,
/// unevenness breaks ties.
std::vector<Length> outward(Length end, std::int64_t runs, Length longest, Length row,
                            const std::vector<Length>& seams) {
    if (runs == 0)
        return {};
    // Narrow runs have no room for uneven shares.
    if (runs == 1 || row * 4 * runs > end)
        row = {};
    const Length share = std::min((end + row) / runs, longest);
    struct Candidate {
        Length at;
        double cost = 0;
        std::ptrdiff_t before = -1;
    };
    std::vector<std::vector<Candidate>> layers{{{Length{}}}};
    for (std::int64_t i = 1; i <= runs; ++i) {
        const Length target = i == runs ? end - share * (runs - 1) : share;
        std::vector<Length> places;
        if (i == runs) {
            places.push_back(end);
        } else {
            places.push_back(share * i);
            places.push_back(eighths(share * i));
            for (const Length s : seams)
                if (s > Length{} && s < end)
                    places.push_back(s);
        }
        std::vector<Candidate> layer;
        for (std::size_t p = 0; p < places.size(); ++p) {
            const Length at = places[p];
            std::optional<Candidate> best;
            for (std::size_t b = 0; b < layers.back().size(); ++b) {
                const Candidate& from = layers.back()[b];
                const Length size = at - from.at;
                // Leave the rest possible and no run a sliver.
                if (size <= Length{} || size > longest || size * 2 < target ||
                    end - at > (runs - i) * longest)
                    continue;
                const double uneven = ratio(size - target, target);
                const double offSeam = i == runs || p > 1 ? 0.0 : p == 1 ? 1.0 : 1.5;
                const double cost = from.cost + offSeam + uneven * uneven;
                if (!best || cost < best->cost)
                    best = Candidate{at, cost, static_cast<std::ptrdiff_t>(b)};
            }
            if (best)
                layer.push_back(*best);
        }
        layers.push_back(std::move(layer));
    }
    std::vector<Length> out(static_cast<std::size_t>(runs));
    std::ptrdiff_t index = 0;
    for (auto i = static_cast<std::size_t>(runs); i >= 1; --i) {
        const Candidate& c = layers[i][static_cast<std::size_t>(index)];
        out[i - 1] = c.at;
        index = c.before;
    }
    return out;
}

/// Puts together the runs left of, in, and right of the first.
AxisCuts assembled(const AxisRoom& r, Interval first, std::int64_t before, std::int64_t after,
                   const std::vector<Length>& seams) {
    std::vector<Length> mirrored, shifted;
    for (const Length s : seams) {
        mirrored.push_back(first.lo - s);
        shifted.push_back(s - first.hi);
    }
    AxisCuts out;
    const auto left = outward(first.lo, before, step(r), r.row, mirrored);
    for (auto i = left.rbegin(); i != left.rend(); ++i)
        out.at.push_back(first.lo - *i);
    out.at.push_back(first.lo);
    out.first = left.size();
    out.at.push_back(first.hi);
    for (const Length d : outward(r.quilt - first.hi, after, step(r), r.row, shifted))
        out.at.push_back(first.hi + d);
    return out;
}

/// The field of the first pass: as centred on its run as the margin allows.
Interval fieldAround(const AxisRoom& r, Interval run, Interval alsoInside) {
    const Length lo = std::min(run.lo, alsoInside.lo), hi = std::max(run.hi, alsoInside.hi);
    const Length spare = r.field - (hi - lo);
    return {lo - spare / 2, lo - spare / 2 + r.field};
}

bool has(const std::vector<Length>& seams, Length at) {
    return std::ranges::find(seams, at) != seams.end();
}

/// First runs to try for a fewest-shifts start with `before` and `after` runs beside it, best
/// first.
std::vector<Interval> firstRuns(const AxisRoom& r, std::int64_t before, std::int64_t after,
                                const std::vector<Length>& seams) {
    const Length s = step(r), n1 = Length::nanometres(1);
    const Length loMost = before == 0 ? Length{} : std::min(before * s, r.quilt - n1);
    const Length hiLeast = after == 0 ? r.quilt : std::max(r.quilt - after * s, n1);
    std::vector<Length> los, his;
    const auto runs = before + after + 1;
    const auto collect = [&](std::vector<Length>& into, Length even, Length extreme, bool fixed,
                             Length fixedAt) {
        if (fixed) {
            into.push_back(fixedAt);
            return;
        }
        into.push_back(even);
        into.push_back(extreme);
        for (const Length at : seams)
            into.push_back(at);
    };
    collect(los, r.quilt * before / runs, loMost, before == 0, Length{});
    collect(his, r.quilt * (before + 1) / runs, hiLeast, after == 0, r.quilt);
    std::vector<Interval> out;
    for (const Length lo : los)
        for (const Length hi : his)
            if (lo < hi && lo <= loMost && hi >= hiLeast && hi - lo <= r.field)
                out.push_back({lo, hi});
    const Length even = r.quilt / runs + ((before > 0 ? 1 : 0) + (after > 0 ? 1 : 0)) * r.row;
    const auto cost = [&](Interval i) {
        const double uneven = ratio(i.size() - even, even);
        const bool loOn = before == 0 || has(seams, i.lo), hiOn = after == 0 || has(seams, i.hi);
        return (loOn ? 0.0 : 1.0) + (hiOn ? 0.0 : 1.0) + uneven * uneven * 4;
    };
    std::ranges::stable_sort(out, [&](Interval a, Interval b) { return cost(a) < cost(b); });
    return out;
}

/// Fewest runs such that the first field also holds `mustHold`.
AxisCuts leastCuts(const AxisRoom& r, Interval mustHold, const std::vector<Length>& seams) {
    const Length middle = r.quilt / 2;
    for (std::int64_t n = freeCount(r);; ++n) {
        std::optional<AxisCuts> best;
        Length bestOff;
        for (std::int64_t before = 0; before < n; ++before) {
            const std::int64_t after = n - 1 - before;
            for (const Interval run : firstRuns(r, before, after, seams)) {
                const Interval all{std::min(run.lo, mustHold.lo), std::max(run.hi, mustHold.hi)};
                if (all.size() > r.field)
                    continue;
                // The middle-most start wins: the rest of the quilt hangs as evenly as it can.
                const Length off = abs(run.middle() - middle);
                if (!best || off < bestOff) {
                    best = assembled(r, run, before, after, seams);
                    best->firstField = fieldAround(r, run, mustHold);
                    bestOff = off;
                }
                break;
            }
        }
        if (best)
            return *best;
    }
}

} // namespace

Length eighths(Length l) {
    return l / Length::inch64ths(8).nm() * Length::inch64ths(8).nm();
}

Interval heldMiddle(const AxisRoom& r) {
    const Length margin = std::min(r.centreMargin, r.field / 2);
    const Length middle = r.quilt / 2;
    return intersection(Interval{middle - margin, middle + margin}, Interval{Length{}, r.quilt});
}

Interval firstFieldAround(Basting::Start start, const AxisRoom& r, Interval run) {
    return fieldAround(r, run, start == Basting::Start::centred ? run : heldMiddle(r));
}

std::int64_t centredCount(const AxisRoom& r) {
    if (r.quilt <= r.field)
        return 1;
    return 1 + 2 * ceilDiv(r.quilt - r.field, 2 * step(r));
}

std::int64_t freeCount(const AxisRoom& r) {
    if (r.quilt <= r.field)
        return 1;
    return std::max<std::int64_t>(1, ceilDiv(r.quilt - r.anchor, step(r)));
}

AxisCuts centredCuts(const AxisRoom& r, const std::vector<Length>& seams) {
    const auto n = centredCount(r);
    const auto beside = (n - 1) / 2;
    const Length middle = r.quilt / 2;
    // An equal share and the rows left to both neighbours, as far as the steps and the field allow;
    // a pair of seams may move it by a third.
    const Length half = n == 1 ? middle : r.quilt / n / 2 + r.row;
    const Length least = middle - beside * step(r), most = r.field / 2;
    Length chosen = std::clamp(half, least, std::max(least, most));
    std::optional<Length> snapped;
    for (const Length s : seams) {
        const Length h = middle - s;
        if (n > 1 && h > Length{} && h >= least && h <= most && has(seams, r.quilt - s) &&
            abs(h - half) <= half / 3 && (!snapped || abs(h - half) < abs(*snapped - half)))
            snapped = h;
    }
    if (snapped)
        chosen = *snapped;
    const Interval run{n == 1 ? Length{} : middle - chosen,
                       n == 1 ? r.quilt : r.quilt - middle + chosen};
    AxisCuts out = assembled(r, run, beside, beside, seams);
    out.firstField = fieldAround(r, run, run);
    return out;
}

std::optional<AxisCuts> besideCentreCuts(const AxisRoom& r, Length most,
                                         const std::vector<Length>& seams) {
    const std::int64_t beside = (centredCount(r) - 1) / 2;
    const Length half = (r.quilt - r.field) / 2;
    if (beside == 0 || half * 2 > (2 * beside - 1) * step(r))
        return {};
    const Length lo = (beside - 1) * step(r);
    if (half - lo > std::min(most, r.field / 2))
        return {};
    const Interval field{lo, lo + r.field};
    for (const Interval run : firstRuns(r, beside - 1, beside, seams))
        if (field.contains(run)) {
            AxisCuts out = assembled(r, run, beside - 1, beside, seams);
            out.firstField = field;
            return out;
        }
    return {};
}

AxisCuts fewestCuts(const AxisRoom& r, const std::vector<Length>& seams) {
    return leastCuts(r, heldMiddle(r), seams);
}

AxisCuts freeCuts(const AxisRoom& r, const std::vector<Length>& seams) {
    return leastCuts(r, {r.quilt / 2, r.quilt / 2}, seams);
}

} // namespace bastewright
