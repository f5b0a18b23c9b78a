#include "planners/batting/best_join.h"

#include <algorithm>
#include <tuple>

namespace bastewright::batting {
namespace {

constexpr std::size_t kMostTrees = 2000;
constexpr Variant kVariants = 48;
constexpr std::size_t kBeam = 150; ///< subsets of each size, where all are too many
constexpr int kMoreJoins = 2;      ///< worth making so that no four corners meet

bool nicer(const JoinLayout& a, const JoinLayout& b) {
    return std::tie(a.corners, a.alongSeams, a.joined) <
           std::tie(b.corners, b.alongSeams, b.joined);
}

bool clean(const JoinLayout& l) {
    return l.corners == 0 && l.alongSeams == 0;
}

/// Nothing where the showing of trees stopped before the first.
std::optional<JoinLayout> bestOf(JoinSearch& search, const Pool& pool,
                                 const std::vector<Segment>& seams) {
    struct Tree {
        TreeLayouts layouts;
        Length shortest;
    };
    std::vector<Tree> trees;
    search.visitTrees(kMostTrees, [&](const JoinTree& tree) {
        TreeLayouts layouts{tree, pool.needed, pool.overlap, seams};
        const Length shortest = layouts.layOut(0).joined;
        trees.push_back({std::move(layouts), shortest});
        return true;
    });
    std::ranges::stable_sort(trees, {}, &Tree::shortest);
    std::optional<JoinLayout> best;
    for (const Tree& tree : trees) {
        if (best && clean(*best) && tree.shortest >= best->joined)
            break; // other variants are cleaner, never shorter
        for (Variant v = 0; v < kVariants; ++v) {
            JoinLayout l = tree.layouts.layOut(v);
            const bool done = clean(l);
            if (!best || nicer(l, *best))
                best = std::move(l);
            if (done)
                break;
        }
    }
    return best;
}

} // namespace

std::optional<int> fewestPieces(const Pool& pool, int most, std::uint64_t& work) {
    JoinSearch search{problemOf(pool), work};
    std::optional<int> out;
    for (int k = std::max(1, search.leastByArea()); k <= most && !out; ++k) {
        const Possible possible = search.possible(k);
        if (possible == Possible::yes)
            out = k;
        if (possible == Possible::unknown)
            break;
    }
    work = search.workLeft();
    return out;
}

BestJoin bestJoin(const Pool& pool, const std::vector<Segment>& backingSeams, std::uint64_t work) {
    BestJoin out;
    JoinSearch exact{problemOf(pool), work}, narrow{problemOf(pool), work, kBeam};
    JoinSearch* search = &exact;
    const int all = int(pool.blanks.size());
    int last = all;
    for (int k = std::max(1, exact.leastByArea()); k <= last; ++k) {
        Possible possible = search->possible(k);
        if (possible == Possible::unknown && out.proven) {
            // Too many pieces for all subsets: go on with the best of each size.
            if (out.layout)
                break;
            out.proven = false;
            search = &narrow;
            possible = search->possible(k);
        }
        if (possible != Possible::yes)
            continue;
        std::optional<JoinLayout> layout = bestOf(*search, pool, backingSeams);
        if (!layout) {
            out.proven = false;
            continue;
        }
        if (!out.layout)
            last = std::min(all, k + kMoreJoins);
        if (!out.layout || layout->corners < out.layout->corners)
            out.layout = std::move(layout);
        if (out.layout->corners == 0)
            break;
    }
    return out;
}

} // namespace bastewright::batting
