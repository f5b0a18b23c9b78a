#include "planners/passes/strip_lines.h"

#include <algorithm>

namespace bastewright {
namespace {

constexpr Length kLeastFirst = Length::inches(12);

/// The least first area with so many strips beside it; nothing where the field does not hold it.
std::optional<Interval> leastFirst(const StripAxis& a, std::int64_t before, std::int64_t after) {
    const Length q = a.room.quilt, least = std::min(kLeastFirst, q);
    Interval out{std::min(before * a.step(), q), std::max(q - after * a.step(), Length{})};
    if (a.centred) {
        if (before != after)
            return {};
        out.lo = std::min(out.lo, q / 2 - least / 2);
        out.hi = q - out.lo;
    } else if (out.size() < least) {
        out.lo = std::clamp(out.hi - least, Length{}, out.lo);
        out.hi = std::max(out.hi, out.lo + least);
    }
    return out;
}

/// Equal shares for all, the first wider by the rows that it leaves to its neighbours.
StripLines evenLines(const StripAxis& a, const StripLines& least) {
    const auto before = std::ssize(least.lo) - 1, after = std::ssize(least.hi) - 1;
    const Length share = a.room.quilt / (before + after + 1);
    StripLines out;
    for (std::ptrdiff_t j = 0; j <= before; ++j)
        out.lo.push_back(share * j - (j == before && j > 0 ? a.room.row : Length{}));
    for (std::ptrdiff_t j = 0; j <= after; ++j)
        out.hi.push_back(a.room.quilt - share * j + (j == after && j > 0 ? a.room.row : Length{}));
    return out;
}

} // namespace

std::optional<StripLines> leastLines(const StripAxis& a, std::int64_t before, std::int64_t after) {
    const auto first = leastFirst(a, before, after);
    if (!first)
        return {};
    StripLines out;
    for (std::int64_t j = 0; j <= before; ++j)
        out.lo.push_back(j == before ? first->lo : std::min(j * a.step(), first->lo));
    for (std::int64_t j = 0; j <= after; ++j)
        out.hi.push_back(j == after ? first->hi : std::max(a.room.quilt - j * a.step(), first->hi));
    if (!fitsField(a, out))
        return {}; // a strip of no width: fewer would do
    return out;
}

StripLines evened(const StripAxis& a, const StripLines& least, int quarters) {
    const StripLines even = evenLines(a, least);
    const auto part = [quarters](Length from, Length to) {
        return from + (to - from) * quarters / 4;
    };
    StripLines out = least;
    for (std::size_t j = 1; j < out.lo.size(); ++j)
        out.lo[j] = std::min(out.lo[j], eighths(part(least.lo[j], even.lo[j])));
    for (std::size_t j = 1; j < out.hi.size(); ++j)
        out.hi[j] =
            a.centred
                ? a.room.quilt - out.lo[j]
                : std::max(out.hi[j],
                           a.room.quilt - eighths(a.room.quilt - part(least.hi[j], even.hi[j])));
    return out;
}

bool fitsField(const StripAxis& a, const StripLines& lines) {
    const Interval first = lines.first();
    const Interval held = a.centred ? first : heldMiddle(a.room);
    if (first.size() < std::min(kLeastFirst, a.room.quilt) ||
        std::max(first.hi, held.hi) - std::min(first.lo, held.lo) > a.room.field)
        return false;
    for (std::size_t j = 1; j < lines.lo.size(); ++j)
        if (lines.lo[j] <= lines.lo[j - 1] || lines.lo[j] - lines.lo[j - 1] > a.step())
            return false;
    for (std::size_t j = 1; j < lines.hi.size(); ++j)
        if (lines.hi[j] >= lines.hi[j - 1] || lines.hi[j - 1] - lines.hi[j] > a.step())
            return false;
    return true;
}

} // namespace bastewright
