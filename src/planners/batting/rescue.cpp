#include "planners/batting/rescue.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace bastewright::batting {
namespace {

/// Cuts of which the nicest result is taken, and the work each may take.
constexpr std::size_t kMostCompared = 4;
constexpr std::uint64_t kWorkCompared = 5'000'000;

/// A place to cut a piece in two.
struct Cut {
    int rank; ///< likeliest first
    std::size_t piece;
    bool acrossWidth;
    Length at; ///< from the trimmed edge
    auto operator<=>(const Cut&) const = default;
};

/// Extents of all pieces but one, less one overlap each, as the search sees them.
std::vector<Length> extentsOf(const Pool& pool, std::size_t except) {
    std::set<Length> out;
    for (std::size_t i = 0; i < pool.blanks.size(); ++i)
        if (i != except) {
            out.insert(pool.blanks[i].usable.width() - pool.overlap);
            out.insert(pool.blanks[i].usable.length() - pool.overlap);
        }
    return {out.begin(), out.end()};
}

/// Cuts of one piece, each with the best rank it is found with.
void addCuts(const Pool& pool, std::size_t piece, std::vector<Cut>& out) {
    const Rect& usable = pool.blanks[piece].usable;
    const std::vector<Length> others = extentsOf(pool, piece);
    const Length least = std::max(2 * pool.overlap, Length::inches(3));
    for (const bool acrossWidth : {true, false}) {
        const Length extent = acrossWidth ? usable.width() : usable.length();
        std::map<Length, int> ranks;
        const auto add = [&](int rank, Length part) {
            // A part loses an overlap; the same two parts come from either end.
            for (const Length at : {part, part + pool.overlap}) {
                const Length nearer = std::min(at, extent - at);
                if (nearer >= least)
                    ranks.try_emplace(nearer, rank);
            }
        };
        for (const Length target : {pool.needed.width, pool.needed.length})
            for (const Length a : others)
                add(0, target - pool.overlap - a);
        for (const Length a : others)
            add(1, a);
        add(2, extent / 2);
        for (const Length target : {pool.needed.width, pool.needed.length})
            for (const Length a : others)
                for (const Length b : others)
                    add(3, target - pool.overlap - a - b);
        for (const auto& [at, rank] : ranks)
            out.push_back({rank, piece, acrossWidth, at});
    }
}

Pool withSplit(const Pool& pool, const Cut& cut) {
    Pool out = pool;
    Blank first = pool.blanks[cut.piece];
    first.part = true;
    Blank second = first;
    if (cut.acrossWidth)
        first.usable.x1 = second.usable.x0 = first.usable.x0 + cut.at;
    else
        first.usable.y1 = second.usable.y0 = first.usable.y0 + cut.at;
    out.blanks[cut.piece] = first;
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
    std::vector<Cut> cuts;
    for (std::size_t i = 0; i < pool.blanks.size(); ++i)
        addCuts(pool, i, cuts);
    std::ranges::sort(cuts);
    int fewest = int(pool.blanks.size()) + 1;
    std::vector<Cut> best;
    for (const Cut& cut : cuts) {
        if (work == 0 || best.size() == kMostCompared)
            break;
        const auto n = fewestPieces(withSplit(pool, cut), fewest, work);
        if (!n)
            continue;
        if (*n < fewest)
            best.clear();
        fewest = *n;
        best.push_back(cut);
    }
    std::optional<Rescue> out;
    for (const Cut& cut : best) {
        const Pool split = withSplit(pool, cut);
        BestJoin join = bestJoin(split, backingSeams, kWorkCompared);
        const auto rank = [](const JoinLayout& l) {
            return std::tuple(l.joins.size(), l.corners, l.alongSeams, l.joined);
        };
        if (!join.layout || (out && rank(*out->join.layout) <= rank(*join.layout)))
            continue;
        const Blank& whole = pool.blanks[cut.piece];
        const Length edge = cut.acrossWidth ? whole.usable.x0 : whole.usable.y0;
        out = Rescue{split, {whole.name, cut.acrossWidth, edge + cut.at}, std::move(join)};
    }
    return out;
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
