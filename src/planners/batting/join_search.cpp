#include "planners/batting/join_search.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <map>
#include <numeric>

namespace bastewright::batting {
namespace {

/// Areas are sums and products of whole nanometres; this is far above their rounding and far below
/// anything that can be cut.
constexpr double kAreaSlack = 1 - 1e-12;

/// Where less of the area may be wasted than this, edges have to match so closely that partners are
/// found by the length of their edge.
constexpr double kTight = 0.02;

/// Looking a subset up costs as much as so many other steps (measured).
constexpr std::uint64_t kWorkToOpen = 12;

} // namespace

JoinSearch::JoinSearch(JoinProblem problem, std::uint64_t work, std::size_t beam)
    : problem_{std::move(problem)}
    , work_{work}
    , beam_{beam}
    , target_{problem_.target.width.nm(), problem_.target.length.nm()} {
    assert(problem_.items.size() <= kMostItems);
    targetArea_ = double(target_.width) * double(target_.length) * kAreaSlack;
    std::map<std::pair<std::int64_t, std::int64_t>, std::vector<int>> kinds;
    for (int i = 0; i < int(problem_.items.size()); ++i) {
        auto w = problem_.items[std::size_t(i)].width.nm(),
             l = problem_.items[std::size_t(i)].length.nm();
        kinds[{w, l}].push_back(i);
    }
    for (auto& [size, items] : kinds)
        types_.push_back({{size.first, size.second},
                          std::move(items),
                          0,
                          0,
                          double(size.first) * double(size.second),
                          1 / double(size.first) + 1 / double(size.second)});
    std::ranges::stable_sort(types_, std::ranges::greater{}, &Type::area);
    int shift = 0;
    largest_.push_back(0);
    for (Type& t : types_) {
        const int bits = int(std::bit_width(t.items.size()));
        t.shift = shift;
        t.mask = ((Key{1} << bits) - 1) << shift;
        capacity_ |= Key(t.items.size()) << shift;
        guards_ |= Key{1} << (shift + bits);
        shift += bits + 1;
        for (std::size_t i = 0; i < t.items.size(); ++i)
            largest_.push_back(largest_.back() + t.area);
    }
    assert(shift <= 64);
    leanest_.resize(types_.size());
    std::iota(leanest_.begin(), leanest_.end(), std::size_t{0});
    std::ranges::stable_sort(leanest_, {}, [this](std::size_t t) { return types_[t].edge; });
}

int JoinSearch::leastByArea() const {
    return int(std::ranges::lower_bound(largest_, targetArea_) - largest_.begin());
}

int JoinSearch::sizeOf(Key key) const {
    int n = 0;
    for (std::size_t t = 0; t < types_.size(); ++t)
        n += countOf(key, t);
    return n;
}

double JoinSearch::restOf(Key key, int others) const {
    double sum = 0;
    for (std::size_t t = 0; t < types_.size() && others > 0; ++t) {
        const int n = std::min(others, int(types_[t].items.size()) - countOf(key, t));
        sum += n * types_[t].area;
        others -= n;
    }
    return sum;
}

std::size_t JoinSearch::open(Level& level, Key key, double used, int others, bool prune) {
    const auto [at, fresh] = level.index.try_emplace(key, level.sets.size());
    if (fresh)
        level.sets.push_back({key, used, prune ? restOf(key, others) : 0, {}});
    return at->second;
}

void JoinSearch::keep(Set& set, Box box) {
    auto& front = set.front; // longer ones later, and so narrower ones later
    auto at = std::ranges::lower_bound(front, box.length, {}, &Box::length);
    if (at != front.end() && at->width >= box.width)
        return;
    // Those no longer and no wider are outdone.
    if (at != front.end() && at->length == box.length)
        ++at;
    auto from = at;
    while (from != front.begin() && std::prev(from)->width <= box.width)
        --from;
    front.insert(front.erase(from, at), box);
}

void JoinSearch::leaf(Level& level, std::size_t type, int others, bool prune) {
    const Type& t = types_[type];
    const double area = double(t.box.width) * double(t.box.length);
    const Key key = Key{1} << t.shift;
    const auto offer = [&](std::int64_t w, std::int64_t l) {
        const Box box{std::min(w, target_.width), std::min(l, target_.length)};
        Set& set = level.sets[open(level, key, area, others, prune)];
        if (!prune || double(box.width) * double(box.length) + set.rest >= targetArea_)
            keep(set, box);
    };
    offer(t.box.width, t.box.length);
    if (problem_.mayTurn)
        offer(t.box.length, t.box.width);
}

/// All rectangles two fronts give that are not outdone: side by side, at each length either offers,
/// the widest of both that are as long; one below the other, at each width, the longest as wide.
template <class F>
void JoinSearch::joinFronts(const std::vector<Box>& a, const std::vector<Box>& b, F&& offer) {
    for (std::size_t i = 0, k = 0; i < a.size() && k < b.size();) {
        const std::int64_t length = std::min(a[i].length, b[k].length);
        offer(Box{a[i].width + b[k].width, length});
        const bool first = a[i].length == length, second = b[k].length == length;
        i += first;
        k += second;
    }
    for (std::size_t i = a.size(), k = b.size(); i > 0 && k > 0;) {
        const std::int64_t width = std::min(a[i - 1].width, b[k - 1].width);
        offer(Box{width, a[i - 1].length + b[k - 1].length});
        const bool first = a[i - 1].width == width, second = b[k - 1].width == width;
        i -= first;
        k -= second;
    }
}

bool JoinSearch::combineAll(int size, int i, int others, bool prune) {
    Level& out = levels_[std::size_t(size)];
    const double most = largest_[std::size_t(std::min<int>(others, int(largest_.size()) - 1))];
    const auto& as = levels_[std::size_t(i)].sets;
    const auto& bs = levels_[std::size_t(size - i)].sets;
    for (std::size_t ia = 0; ia < as.size(); ++ia) {
        const std::size_t from = 2 * i == size ? ia : 0;
        if (work_ < bs.size() - from)
            return false;
        work_ -= bs.size() - from;
        const Set& a = as[ia];
        for (std::size_t ib = from; ib < bs.size(); ++ib) {
            const Set& b = bs[ib];
            const Key sum = a.key + b.key;
            if (!fits(sum))
                continue;
            const double used = a.used + b.used;
            if (prune && used + most < targetArea_)
                continue;
            Set& joined = out.sets[open(out, sum, used, others, prune)];
            const double floor = prune ? targetArea_ - joined.rest : 0;
            if (used < floor)
                continue;
            work_ -= std::min<std::uint64_t>(work_, kWorkToOpen + a.front.size() + b.front.size());
            const auto offer = [&](Box box) {
                box = {std::min(box.width, target_.width), std::min(box.length, target_.length)};
                if (double(box.width) * double(box.length) >= floor)
                    keep(joined, box);
            };
            joinFronts(a.front, b.front, offer);
        }
    }
    return true;
}

bool JoinSearch::combineTight(int size, int i, int others, bool beside) {
    Level& out = levels_[std::size_t(size)];
    const auto entries = [&](int level) -> const std::vector<Entry>& {
        const Level& l = levels_[std::size_t(level)];
        return beside ? l.byLength : l.byWidth;
    };
    const auto& as = entries(i);
    const auto& bs = entries(size - i);
    const auto& aSets = levels_[std::size_t(i)].sets;
    const auto& bSets = levels_[std::size_t(size - i)].sets;
    std::int64_t shallowest = INT64_MAX;
    for (const Entry& b : bs)
        shallowest = std::min(shallowest, b.depth);
    for (const Entry& a : as) {
        // What stands out beyond the shorter edge is lost.
        const double below = spare_ / double(a.depth), above = spare_ / double(shallowest);
        const auto lo = std::ranges::lower_bound(bs, double(a.edge) - below - 1, {},
                                                 [](const Entry& e) { return double(e.edge); });
        for (auto b = lo; b != bs.end() && double(b->edge) <= double(a.edge) + above + 1; ++b) {
            if (work_ == 0)
                return false;
            --work_;
            const Set &sa = aSets[a.set], &sb = bSets[b->set];
            const Key sum = sa.key + sb.key;
            if (!fits(sum))
                continue;
            const std::int64_t edge = std::min(a.edge, b->edge), depth = a.depth + b->depth;
            const Box box = beside ? Box{std::min(depth, target_.width), edge}
                                   : Box{edge, std::min(depth, target_.length)};
            const double used = sa.used + sb.used;
            const double area = double(box.width) * double(box.length);
            if (area + spare_ < used)
                continue;
            Set& joined = out.sets[open(out, sum, used, others, true)];
            if (area + joined.rest >= targetArea_)
                keep(joined, box);
        }
    }
    return true;
}

/// Forgets subsets that kept nothing and sorts the rest for `combineTight`.
void JoinSearch::close(Level& level) {
    std::erase_if(level.sets, [](const Set& s) { return s.front.empty(); });
    if (beam_ > 0 && level.sets.size() > beam_) {
        narrowed_ = true;
        const auto waste = [](const Set& s) {
            double most = 0;
            for (const Box& b : s.front)
                most = std::max(most, double(b.width) * double(b.length));
            return (s.used - most) / s.used;
        };
        std::ranges::stable_sort(level.sets, {}, waste);
        level.sets.resize(beam_);
    }
    level.index.clear();
    for (std::size_t i = 0; i < level.sets.size(); ++i) {
        level.index[level.sets[i].key] = i;
        for (const Box& b : level.sets[i].front) {
            level.byLength.push_back({b.length, b.width, i});
            level.byWidth.push_back({b.width, b.length, i});
        }
    }
    std::ranges::stable_sort(level.byLength, {}, &Entry::edge);
    std::ranges::stable_sort(level.byWidth, {}, &Entry::edge);
}

bool JoinSearch::build(int pieces, int reach, bool prune) {
    reach_ = reach;
    known_.clear();
    levels_.assign(std::size_t(reach) + 1, {});
    narrowed_ = false;
    spare_ = largest_[std::size_t(pieces)] - targetArea_;
    const bool tight = prune && spare_ < kTight * targetArea_;
    for (std::size_t t = 0; t < types_.size(); ++t)
        leaf(levels_[1], t, pieces - 1, prune);
    close(levels_[1]);
    for (int size = 2; size <= reach; ++size) {
        for (int i = 1; 2 * i <= size; ++i) {
            const int others = pieces - size;
            const bool done =
                tight ? combineTight(size, i, others, true) && combineTight(size, i, others, false)
                      : combineAll(size, i, others, prune);
            if (!done)
                return false;
        }
        close(levels_[std::size_t(size)]);
    }
    return true;
}

std::vector<JoinSearch::Assembly> JoinSearch::assemblies(int mostPieces) {
    std::vector<Assembly> out;
    if (problem_.items.empty())
        return out;
    const int most = std::min(mostPieces, int(problem_.items.size()));
    build(most, most, false);
    for (const Level& level : levels_)
        for (const Set& s : level.sets)
            for (const Box& b : s.front) {
                Assembly a{{}, b.width, b.length};
                for (std::size_t t = 0; t < types_.size(); ++t)
                    for (int i = 0; i < countOf(s.key, t); ++i)
                        a.items.push_back(types_[t].items[std::size_t(i)]);
                out.push_back(std::move(a));
            }
    return out;
}

} // namespace bastewright::batting
