#include "planners/batting/join_search.h"

#include <algorithm>

/// From the target downwards: what is wanted of a subset too large to have been built.
namespace bastewright::batting {
namespace {

/// Areas are sums and products of whole nanometres, rounded.
constexpr double kRounding = 1 + 1e-12;

} // namespace

Possible JoinSearch::possible(int pieces) {
    full_.clear();
    stoppedShort_ = false;
    const int all = int(problem_.items.size());
    if (pieces > all || pieces < leastByArea())
        return Possible::no;
    const bool whole = beam_ > 0; // of what a beam keeps, only what it keeps to the end is found
    if (!build(pieces, whole ? pieces : std::max(1, pieces / 2), true))
        return Possible::unknown;
    if (whole)
        fill(0, pieces, target_.width, target_.length);
    else if (pieces == all && holds(capacity_, pieces, target_.width, target_.length))
        full_.push_back(capacity_);
    else if (pieces < all)
        fill(0, pieces, target_.width, target_.length);
    std::ranges::sort(full_);
    full_.erase(std::unique(full_.begin(), full_.end()), full_.end());
    std::ranges::stable_sort(full_, {}, [this](Key key) { return areaOf(key); });
    if (!full_.empty())
        return Possible::yes;
    return knowsAll() ? Possible::no : Possible::unknown;
}

/// Every subset of up to half of `left` pieces, all `free`, that goes across what is wanted, with
/// what is then wanted of the rest; until `rest` says true.
template <class F>
bool JoinSearch::takeOff(Key free, int left, std::int64_t width, std::int64_t length, F&& rest) {
    for (int n = 1; 2 * n <= left; ++n) {
        const std::vector<Set>& sets = levels_[std::size_t(n)].sets;
        if (work_ < sets.size()) {
            stoppedShort_ = true;
            return false;
        }
        work_ -= sets.size();
        for (const Set& s : sets) {
            if (!within(s.key, free))
                continue;
            if (const std::int64_t w = widest(s, length);
                w > 0 && rest(s, n, std::max<std::int64_t>(1, width - w), length))
                return true;
            if (const std::int64_t l = longest(s, width);
                l > 0 && rest(s, n, width, std::max<std::int64_t>(1, length - l)))
                return true;
        }
    }
    return false;
}

/// Can all of a subset be joined to hold a rectangle?
bool JoinSearch::holds(Key key, int size, std::int64_t width, std::int64_t length) {
    if (size <= reach_) {
        const Set* set = find(key, size);
        return set && widest(*set, length) >= width;
    }
    const double area = areaOf(key);
    if (double(width) * double(length) > area * kRounding)
        return false;
    Known& known = known_[key];
    for (const Box& b : known.can)
        if (b.width >= width && b.length >= length)
            return true;
    for (const Box& b : known.cannot)
        if (b.width <= width && b.length <= length)
            return false;
    const bool can =
        takeOff(key, size, width, length, [&](const Set& s, int n, std::int64_t w, std::int64_t l) {
            return double(w) * double(l) <= (area - s.used) * kRounding &&
                   holds(key - s.key, size - n, w, l);
        });
    if (can || !stoppedShort_)
        (can ? known_[key].can : known_[key].cannot).push_back({width, length});
    return can;
}

/// Notes every subset of `left` pieces besides those used that holds a rectangle, with those used.
void JoinSearch::fill(Key used, int left, std::int64_t width, std::int64_t length) {
    const double area = double(width) * double(length);
    if (area > restOf(used, left) * kRounding)
        return;
    if (left <= reach_) {
        for (const Set& s : levels_[std::size_t(left)].sets)
            if (fits(used + s.key) && widest(s, length) >= width)
                full_.push_back(used + s.key);
        return;
    }
    // What was asked before in the place of the same pieces, and was as easy, has noted all.
    for (const Box& b : known_[used].cannot)
        if (b.width <= width && b.length <= length)
            return;
    takeOff(capacity_ - used, left, width, length,
            [&](const Set& s, int n, std::int64_t w, std::int64_t l) {
                fill(used + s.key, left - n, w, l);
                return stoppedShort_;
            });
    known_[used].cannot.push_back({width, length});
}

double JoinSearch::areaOf(Key key) const {
    double sum = 0;
    for (std::size_t t = 0; t < types_.size(); ++t)
        sum += countOf(key, t) * types_[t].area;
    return sum;
}

const JoinSearch::Set* JoinSearch::find(Key key, int size) const {
    const Level& level = levels_[std::size_t(size)];
    const auto at = level.index.find(key);
    return at == level.index.end() ? nullptr : &level.sets[at->second];
}

std::int64_t JoinSearch::widest(const Set& set, std::int64_t length) {
    const auto at = std::ranges::lower_bound(set.front, length, {}, &Box::length);
    return at == set.front.end() ? -1 : at->width;
}

std::int64_t JoinSearch::longest(const Set& set, std::int64_t width) {
    const auto at =
        std::ranges::lower_bound(set.front, width, std::ranges::greater_equal{}, &Box::width);
    return at == set.front.begin() ? -1 : std::prev(at)->length;
}

/// Joins cannot be shorter than this where a subset shows width × length: half the edges of all
/// pieces less half of the rectangle's, and a piece that shows a share of its area has at least
/// that share of its edges.
std::int64_t JoinSearch::leastJoins(Key key, std::int64_t width, std::int64_t length) const {
    double area = double(width) * double(length), sum = 0;
    for (const std::size_t t : leanest_) {
        const double shown = std::min(area, countOf(key, t) * types_[t].area);
        sum += shown * types_[t].edge;
        if ((area -= shown) <= 0)
            break;
    }
    return std::max<std::int64_t>(0, std::int64_t(sum * (1 - 1e-12)) - width - length);
}

} // namespace bastewright::batting
