#include "planners/batting/rescue.h"

#include <algorithm>
#include <set>

namespace bastewright::batting {
namespace {

/// Places to cut an extent: so that a part equals what one or two others leave of the target, or
/// matches another piece; and the middle.
std::set<Length> cutsOf(Length extent, Length target, const std::vector<Length>& others,
                        Length overlap) {
    std::set<Length> goals{extent / 2};
    for (const Length a : others) {
        goals.insert(a);
        goals.insert(target - a);
        for (const Length b : others)
            goals.insert(target - a - b);
    }
    std::set<Length> out;
    const Length least = std::max(2 * overlap, Length::inches(3));
    for (const Length goal : goals)
        for (const Length at : {goal, extent - goal})
            if (at >= least && extent - at >= least)
                out.insert(at);
    return out;
}

/// All goals are effective extents (less one overlap), as the search sees them.
std::vector<Length> extentsOf(const Pool& pool, std::size_t except) {
    std::set<Length> out;
    for (std::size_t i = 0; i < pool.blanks.size(); ++i)
        if (i != except) {
            out.insert(pool.blanks[i].usable.width() - pool.overlap);
            out.insert(pool.blanks[i].usable.length() - pool.overlap);
        }
    return {out.begin(), out.end()};
}

Pool withSplit(const Pool& pool, std::size_t piece, bool acrossWidth, Length at) {
    Pool out = pool;
    Blank first = pool.blanks[piece];
    first.part = true;
    Blank second = first;
    if (acrossWidth)
        first.usable.x1 = second.usable.x0 = first.usable.x0 + at;
    else
        first.usable.y1 = second.usable.y0 = first.usable.y0 + at;
    out.blanks[piece] = first;
    out.blanks.push_back(second);
    return out;
}

struct Extra {
    const Pool& pool;
    const std::vector<JoinSearch::Assembly>& assemblies;
    Length step;

    Length raw(std::int64_t effective) const {
        return step * ceilDiv(Length::nanometres(effective) + pool.overlap + 2 * pool.trim, step);
    }
    static double area(Size s) { return s.width.in() * s.length.in(); }

    /// Least piece that fills width × length together with assemblies free of `used`.
    Size fill(std::int64_t width, std::int64_t length, std::uint64_t used, int depth) const {
        Size best{raw(width), raw(length)};
        if (depth == 0)
            return best;
        for (const JoinSearch::Assembly& a : assemblies) {
            std::uint64_t mask = 0;
            for (const int i : a.items)
                mask |= std::uint64_t{1} << i;
            if (mask & used)
                continue;
            Size s = best;
            if (a.length >= length && a.width < width)
                s = fill(width - a.width, length, used | mask, depth - 1);
            else if (a.width >= width && a.length < length)
                s = fill(width, length - a.length, used | mask, depth - 1);
            if (area(s) < area(best))
                best = s;
        }
        return best;
    }
};

} // namespace

std::optional<Rescue> splitOne(const Pool& pool, const std::vector<Segment>& backingSeams,
                               std::uint64_t work) {
    std::optional<Rescue> best;
    double area = 0;
    for (const Size s : problemOf(pool).items)
        area += s.width.in() * s.length.in();
    const JoinProblem whole = problemOf(pool);
    if (area < whole.target.width.in() * whole.target.length.in())
        return best; // no cut makes batting
    std::uint64_t left = work;
    for (std::size_t i = 0; i < pool.blanks.size(); ++i) {
        const std::vector<Length> others = extentsOf(pool, i);
        std::set<std::pair<bool, Length>> cuts;
        const Rect& usable = pool.blanks[i].usable;
        for (const bool acrossWidth : {true, false}) {
            const Length extent = acrossWidth ? usable.width() : usable.length();
            for (const Length target : {whole.target.width, whole.target.length})
                for (const Length at : cutsOf(extent, target, others, pool.overlap))
                    cuts.insert({acrossWidth, at});
            // A goal is an extent less one overlap; the part must be that much longer.
            for (const Length target : {whole.target.width, whole.target.length})
                for (const Length at : cutsOf(extent - pool.overlap, target, others, pool.overlap))
                    cuts.insert({acrossWidth, at + pool.overlap});
        }
        for (const auto& [acrossWidth, at] : cuts) {
            const Pool cut = withSplit(pool, i, acrossWidth, at);
            JoinSearch search{problemOf(cut), left};
            const BestJoin join =
                bestJoin(cut, backingSeams, std::min<std::uint64_t>(left, 2'000'000));
            left -= std::min<std::uint64_t>(left, 100'000);
            if (!join.layout)
                continue;
            const auto rank = [](const JoinLayout& l) {
                return std::tuple(l.joins.size(), l.corners, l.alongSeams, l.joined);
            };
            if (!best || rank(*join.layout) < rank(best->layout))
                best = Rescue{
                    cut,
                    {pool.blanks[i].name, acrossWidth, at + (acrossWidth ? usable.x0 : usable.y0)},
                    *join.layout};
        }
    }
    return best;
}

Size leastExtra(const Pool& pool, Unit unit) {
    Pool few = pool;
    few.blanks.resize(std::min<std::size_t>(few.blanks.size(), 10));
    const JoinProblem problem = problemOf(few);
    JoinSearch search{problem, 20'000'000};
    const auto assemblies = search.assemblies(int(few.blanks.size()));
    const Length step = unit == Unit::inch ? Length::inches(1) : Length::millimetres(10);
    return Extra{few, assemblies, step}.fill(problem.target.width.nm(), problem.target.length.nm(),
                                             0, 2);
}

} // namespace bastewright::batting
