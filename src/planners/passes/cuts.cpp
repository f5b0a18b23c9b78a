#include "planners/passes/cuts.h"

#include <algorithm>

namespace bastewright {
namespace {

/// A boundary is not seen between points nearer to each other than this.
constexpr Length kLeastGap = Length::inch64ths(16);
constexpr Length kFreeStep = Length::inch64ths(16);

/// The middle of a gap, or a seam in the middle half of it.
Length placeIn(Interval gap, std::span<const Length> seams) {
    const Length middle = gap.middle();
    Length best = middle;
    bool found = false;
    for (auto s = std::ranges::lower_bound(seams, gap.lo); s != seams.end() && *s <= gap.hi; ++s)
        if (abs(*s - middle) * 4 <= gap.size() &&
            (!found || abs(*s - middle) < abs(best - middle))) {
            best = *s;
            found = true;
        }
    return best;
}

Length widestStretch(const AxisLines& lines) {
    Length widest;
    for (std::size_t i = 1; i < lines.cuts.size(); ++i)
        widest = std::max(widest, lines.cuts[i].at - lines.cuts[i - 1].at);
    return widest;
}

void cutAtQuarters(AxisLines& lines) {
    lines.cuts = {{Length{}, 0}};
    for (Length at = kFreeStep; at < lines.quilt; at += kFreeStep) {
        const auto next = std::ranges::lower_bound(lines.at, at);
        if (next != lines.at.end() && *next == at)
            continue; // a point belongs to one side
        const auto before = static_cast<std::size_t>(next - lines.at.begin());
        if (before > 0 && before < lines.at.size())
            lines.cuts.push_back({at, before});
    }
    lines.cuts.push_back({lines.quilt, lines.at.size()});
}

} // namespace

AxisLines axisLines(std::vector<Length> coordinates, Length quilt, Length spacing,
                    std::span<const Length> seams) {
    AxisLines out{.quilt = quilt, .at = std::move(coordinates), .cuts = {}};
    if (out.at.empty()) {
        const auto rows = std::max<std::int64_t>(1, ceilDiv(quilt, spacing));
        for (std::int64_t i = 0; i < rows; ++i)
            out.at.push_back(quilt * (2 * i + 1) / (2 * rows));
    }
    std::ranges::sort(out.at);
    const auto same = std::ranges::unique(out.at);
    out.at.erase(same.begin(), same.end());

    out.cuts.push_back({Length{}, 0});
    for (std::size_t i = 1; i < out.at.size(); ++i) {
        const Interval gap{out.at[i - 1], out.at[i]};
        if (gap.size() >= kLeastGap)
            out.cuts.push_back({placeIn(gap, seams), i});
    }
    out.cuts.push_back({quilt, out.at.size()});
    if (widestStretch(out) > spacing * 3 / 2 + Length::inches(1))
        cutAtQuarters(out);
    return out;
}

std::size_t cutBefore(const AxisLines& lines, Length at) {
    const auto after =
        std::ranges::upper_bound(lines.cuts, at, {}, [](const Cut& c) { return c.at; });
    const auto i = after - lines.cuts.begin();
    return static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(i, 1, std::ssize(lines.cuts) - 1)) -
           1;
}

} // namespace bastewright
