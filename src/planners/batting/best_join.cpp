#include "planners/batting/best_join.h"

#include <algorithm>
#include <tuple>

namespace bastewright::batting {
namespace {

constexpr std::size_t kBeam = 150; ///< subsets of each size, where all are too many
constexpr int kMoreJoins = 2;      ///< worth making so that no four corners meet
/// Nodes put on trees before the comparing of ways stops short, for few pieces and for more; where
/// it has shown none till then, before it gives up.
constexpr std::size_t kTreeSteps[] = {20'000, 80'000}, kFirstTreeSteps = 2'000'000;
constexpr std::size_t kFew = 10;
/// Of the trees that have a fault as short as can be, so many are tried in other layouts, in so
/// many with parts in any order.
constexpr std::size_t kMostFaulty = 24;
constexpr std::uint64_t kShuffles = 48;

bool nicer(const JoinLayout& a, const JoinLayout& b) {
    return std::tie(a.corners, a.alongSeams, a.joined) <
           std::tie(b.corners, b.alongSeams, b.joined);
}

bool clean(const JoinLayout& l) {
    return l.corners == 0 && l.alongSeams == 0;
}

/// The best of all ways a search found with so many pieces.
class Chooser {
public:
    Chooser(JoinSearch& search, const Pool& pool, const std::vector<Segment>& seams)
        : search_{search}
        , pool_{pool}
        , seams_{seams} {}

    /// Nothing where no tree was shown.
    BestJoin best() && {
        std::size_t steps = kTreeSteps[pool_.blanks.size() > kFew];
        const bool all = visit(steps) && search_.knowsAll();
        if (!best_ && steps == 0) { // the first there is
            steps = kFirstTreeSteps;
            visit(steps);
        }
        tryHarder();
        return {std::move(best_), true, all && best_ && best_->joined <= least_, all && none_};
    }

private:
    bool visit(std::size_t& steps) {
        bool all = true;
        const bool first = steps == kFirstTreeSteps;
        for (std::size_t way = 0; way < search_.ways() && steps > 0; ++way)
            all &= search_.visitTrees(way, limit(), steps, [&](const JoinTree& tree, std::int64_t) {
                add(tree);
                return first ? 0 : limit();
            });
        return all && steps > 0;
    }

    /// No tree is of use whose joins, not counting what overlaps add at the edges, reach this: at
    /// least one join goes from edge to edge.
    std::int64_t limit() const { return clean_ ? (best_->joined - pool_.overlap).nm() : INT64_MAX; }

    bool take(JoinLayout l) {
        const bool good = clean(l);
        clean_ |= good;
        if (!best_ || nicer(l, *best_))
            best_ = std::move(l);
        return good;
    }

    void add(const JoinTree& tree) {
        TreeLayouts layouts{tree, pool_.needed, pool_.overlap, seams_};
        JoinLayout plain = layouts.plain();
        const Length shortest = plain.joined;
        least_ = std::min(least_, shortest);
        if ((clean_ && shortest >= best_->joined) || take(std::move(plain)))
            return;
        TreeLayouts::Staggered other = layouts.staggered(0);
        none_ &= other.provenNone;
        const bool found = other.best && take(std::move(*other.best));
        if (!found && faulty_.size() < kMostFaulty)
            faulty_.push_back({std::move(layouts), shortest});
    }

    /// Trees that have a fault as short as they can be: with what is to spare shared otherwise, and
    /// where no tree is without one, in any order.
    void tryHarder() {
        std::ranges::stable_sort(faulty_, {}, &Faulty::shortest);
        for (const Faulty& f : faulty_)
            for (int n = 1; n <= TreeLayouts::kOtherShares; ++n) {
                if (clean_ && f.shortest >= best_->joined)
                    return;
                if (auto other = f.layouts.staggered(n).best)
                    take(std::move(*other));
            }
        for (const Faulty& f : faulty_)
            for (std::uint64_t n = 1; n <= kShuffles && !clean_; ++n)
                take(f.layouts.shuffled(n));
    }

    struct Faulty {
        TreeLayouts layouts;
        Length shortest;
    };

    JoinSearch& search_;
    const Pool& pool_;
    const std::vector<Segment>& seams_;
    std::optional<JoinLayout> best_;
    bool clean_ = false, none_ = true;
    std::vector<Faulty> faulty_;
    Length least_ = Length::nanometres(INT64_MAX);
};

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
        if (possible == Possible::unknown && out.fewest) {
            // Too many pieces for all subsets: go on with the best of each size.
            if (out.layout)
                break;
            out.fewest = false;
            search = &narrow;
            possible = search->possible(k);
        }
        if (possible != Possible::yes)
            continue;
        BestJoin best = Chooser{*search, pool, backingSeams}.best();
        if (!best.layout) {
            out.fewest = false;
            continue;
        }
        if (!out.layout)
            last = std::min(all, k + kMoreJoins);
        if (!out.layout || best.layout->corners < out.layout->corners) {
            best.fewest = out.fewest;
            out = std::move(best);
        }
        if (out.layout->corners == 0)
            break;
    }
    return out;
}

} // namespace bastewright::batting
