#include "planners/crew/share_out.h"

#include "plan/trade_times.h"
#include "planners/crew/cut_lines.h"
#include "planners/crew/hands.h"
#include "planners/crew/slowest.h"
#include "planners/crew/step_times.h"
#include "planners/surface/helper_order.h"
#include "ways/way.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace bastewright::crew {
namespace {

using namespace trade_times;

/// A rectangle of cells: columns a … b − 1, rows c … d − 1.
struct Cells {
    int a = 0, b = 0, c = 0, d = 0;
    bool empty() const { return a >= b || c >= d; }
    auto operator<=>(const Cells&) const = default;
};

/// What a group of people makes of an area: who is last, and everybody's work.
struct Cost {
    double unreached = 0, most = 0, sum = 0;
    /// A second of the slowest weighs as much as many of the others.
    double weight() const { return 1e6 * unreached + most + 1e-3 * sum; }
};

Cost both(const Cost& a, const Cost& b) {
    return {a.unreached + b.unreached, std::max(a.most, b.most), a.sum + b.sum};
}

/// How a group shares an area: a cut across x or y, at a line, between the first people in that
/// order and the rest.
struct Cut {
    bool acrossX = true;
    int first = 0; ///< how many of the group lie before the cut
    int line = 0;
    int step = -1; ///< where the cut steps on by one line, on the other axis; −1: nowhere
    bool stepBefore = false; ///< the part before `step` has the line more
    Cost cost{};
};

/// A step of the cut is one more thing to remember.
constexpr double kWorthStep = 8;

class Sharer {
public:
    Sharer(const Ground& g, const std::vector<Post>& posts)
        : g_{g}
        , posts_{posts}
        , columns_{static_cast<int>(g.xs.size()) - 1}
        , rows_{static_cast<int>(g.ys.size()) - 1} {
        for (const Post& p : posts)
            addSums(p);
    }

    Sharing run() {
        Sharing out;
        out.parts.resize(posts_.size());
        out.seconds.assign(posts_.size(), 0);
        std::vector<int> all(posts_.size());
        for (std::size_t k = 0; k < all.size(); ++k)
            all[k] = static_cast<int>(k);
        const Cells whole{0, columns_, 0, rows_};
        if (!all.empty() && !g_.points.empty())
            give(all, {whole}, out);
        else
            out.unreached = static_cast<int>(g_.points.size());
        out.slowest = middleOfSlowest(out.seconds, spreadOfWork());
        return out;
    }

private:
    struct Sums {
        std::vector<float> work, unreached; ///< of all cells before a column and a row
    };

    std::size_t at(int x, int y) const { return static_cast<std::size_t>(y * (columns_ + 1) + x); }

    void addSums(const Post& post) {
        Sums s;
        s.work.assign(at(columns_, rows_) + 1, 0);
        s.unreached = s.work;
        for (const PlacedPoint& p : g_.points) {
            const auto how = !g_.limited ? std::optional{ReachKind::easy}
                                         : reaching(*post.helper, g_.table, post.edges, p.at);
            const auto to = at(cellOf(g_.xs, p.at.x) + 1, cellOf(g_.ys, p.at.y) + 1);
            s.work[to] += how == ReachKind::leaning ? static_cast<float>(kLeaningFactor) : 1.0F;
            s.unreached[to] += how ? 0.0F : 1.0F;
        }
        for (auto* sums : {&s.work, &s.unreached}) {
            for (int y = 0; y <= rows_; ++y)
                for (int x = 1; x <= columns_; ++x)
                    (*sums)[at(x, y)] += (*sums)[at(x - 1, y)];
            for (int y = 1; y <= rows_; ++y)
                for (int x = 0; x <= columns_; ++x)
                    (*sums)[at(x, y)] += (*sums)[at(x, y - 1)];
        }
        sums_.push_back(std::move(s));
    }

    static int cellOf(const std::vector<Length>& lines, Length at) {
        const auto above = std::ranges::upper_bound(lines, at);
        return std::clamp(static_cast<int>(above - lines.begin()), 1,
                          static_cast<int>(lines.size()) - 1) -
               1;
    }

    double sumIn(const std::vector<float>& s, const Cells& r) const {
        return r.empty() ? 0
                         : double(s[at(r.b, r.d)]) - double(s[at(r.a, r.d)]) -
                               double(s[at(r.b, r.c)]) + double(s[at(r.a, r.c)]);
    }

    /// One person with all of these cells.
    Cost alone(int post, const std::vector<Cells>& parts) const {
        const Sums& s = sums_[static_cast<std::size_t>(post)];
        double work = 0;
        Cost out;
        int zones = 0;
        for (const Cells& r : parts) {
            const double here = sumIn(s.work, r);
            work += here;
            out.unreached += sumIn(s.unreached, r);
            if (here > 0)
                zones += std::max(1, static_cast<int>(std::lround(here / g_.mostInZone)));
        }
        if (work > 0) {
            const double pace = soundPace(posts_[static_cast<std::size_t>(post)].helper->pace);
            out.most = work * g_.secondsAPoint / pace + kStepUpToZone * zones;
            out.sum = out.most;
        }
        return out;
    }

    /// People in their order along an axis; equal places by the other axis.
    std::vector<int> ordered(std::vector<int> group, bool acrossX) const {
        std::ranges::stable_sort(group, {}, [&](int k) {
            const Point& p = posts_[static_cast<std::size_t>(k)].at;
            return acrossX ? std::pair{p.x, p.y} : std::pair{p.y, p.x};
        });
        return group;
    }

    Length along(int k, bool acrossX) const {
        const Point& p = posts_[static_cast<std::size_t>(k)].at;
        return acrossX ? p.x : p.y;
    }

    double paces(const std::vector<int>& group, int first) const {
        double sum = 0;
        for (int k = 0; k < first; ++k)
            sum +=
                posts_[static_cast<std::size_t>(group[static_cast<std::size_t>(k)])].helper->pace;
        return sum;
    }

    /// Where to split a group in its order: everywhere for few, near the middle of their paces for
    /// many. Never between two who stand at the same place of the axis.
    std::vector<int> splits(const std::vector<int>& group, bool acrossX) const {
        const int n = static_cast<int>(group.size());
        std::vector<int> out;
        for (int k = 1; k < n; ++k)
            if (along(group[static_cast<std::size_t>(k)], acrossX) >
                along(group[static_cast<std::size_t>(k - 1)], acrossX))
                out.push_back(k);
        if (n <= 3 || out.size() <= 1)
            return out;
        const double half = paces(group, n) / 2;
        std::ranges::stable_sort(out, {}, [&](int k) { return std::abs(paces(group, k) - half); });
        out.resize(1);
        return out;
    }

    const Cost& costOf(const std::vector<int>& group, const Cells& r) {
        if (group.size() == 1) {
            single_ = alone(group.front(), {r});
            return single_;
        }
        return best(group, r).cost;
    }

    static std::uint64_t keyOf(const Cells& r) {
        return (std::uint64_t(r.a) << 24U) | (std::uint64_t(r.b) << 16U) |
               (std::uint64_t(r.c) << 8U) | std::uint64_t(r.d);
    }

    const Cut& best(const std::vector<int>& group, const Cells& r) {
        std::uint64_t people = 0;
        for (const int k : group)
            people |= std::uint64_t{1} << static_cast<unsigned>(k);
        const auto key = std::pair{people, keyOf(r)};
        if (const auto known = known_.find(key); known != known_.end())
            return known->second;
        std::optional<Cut> found;
        for (const bool acrossX : {true, false}) {
            const auto order = ordered(group, acrossX);
            for (const int first : splits(order, acrossX)) {
                const Cut cut = bestLine(order, first, acrossX, r);
                if (!found || cut.cost.weight() < found->cost.weight() - 1e-9)
                    found = cut;
            }
        }
        if (!found) // all at one place: in any order
            found = bestLine(group, static_cast<int>(group.size()) / 2, true, r);
        return known_.emplace(key, *found).first->second;
    }

    static std::pair<Cells, Cells> halves(const Cells& r, bool acrossX, int line) {
        Cells one = r, other = r;
        if (acrossX)
            one.b = other.a = line;
        else
            one.d = other.c = line;
        return {one, other};
    }

    /// The line at which both halves are through together, as near as lines allow.
    Cut bestLine(const std::vector<int>& order, int first, bool acrossX, const Cells& r) {
        const std::vector<int> one(order.begin(), order.begin() + first),
            other(order.begin() + first, order.end());
        const int lo = acrossX ? r.a : r.c, hi = acrossX ? r.b : r.d;
        Cut best{.acrossX = acrossX, .first = first, .line = lo};
        bool any = false;
        const auto look = [&](int line) {
            const auto [a, b] = halves(r, acrossX, line);
            const Cost ca = costOf(one, a), cb = costOf(other, b);
            const Cost cost = both(ca, cb);
            if (!any || cost.weight() < best.cost.weight() - 1e-9) {
                best.line = line;
                best.cost = cost;
                any = true;
            }
            return ca.weight() - cb.weight();
        };
        // The first half's work grows with the line, the other's falls.
        int before = lo, after = hi;
        int line = guess(order, first, acrossX, r);
        for (int step = 1;;) {
            const double ahead = look(line);
            if (ahead < 0)
                before = line;
            else
                after = line;
            if (after - before <= 1)
                break;
            // From the guess outward, then by halves.
            const int next = ahead < 0 ? line + step : line - step;
            line = next > before && next < after ? next : (before + after) / 2;
            step *= 2;
        }
        look(before);
        look(after);
        return best;
    }

    /// The line that shares the points by paces.
    int guess(const std::vector<int>& order, int first, bool acrossX, const Cells& r) const {
        const double all = paces(order, static_cast<int>(order.size()));
        const double share = all > 0 ? paces(order, first) / all : 0.5;
        const auto& work = sums_[static_cast<std::size_t>(order.front())].work;
        const double wanted = share * sumIn(work, r);
        int lo = acrossX ? r.a : r.c, hi = acrossX ? r.b : r.d;
        const int from = lo, to = hi;
        while (hi - lo > 1) {
            const int middle = (lo + hi) / 2;
            (sumIn(work, halves(r, acrossX, middle).first) < wanted ? lo : hi) = middle;
        }
        return std::clamp(lo, from, to);
    }

    static std::pair<std::vector<Cells>, std::vector<Cells>> stepped(const Cells& r,
                                                                     const Cut& cut) {
        if (cut.step < 0) {
            const auto [a, b] = halves(r, cut.acrossX, cut.line);
            return {{a}, {b}};
        }
        std::pair<std::vector<Cells>, std::vector<Cells>> out;
        const auto [near, far] = halves(r, !cut.acrossX, cut.step);
        const auto [a, b] = halves(near, cut.acrossX, cut.line + (cut.stepBefore ? 1 : 0));
        const auto [c, d] = halves(far, cut.acrossX, cut.line + (cut.stepBefore ? 0 : 1));
        for (const Cells& x : {a, c})
            if (!x.empty())
                out.first.push_back(x);
        for (const Cells& x : {b, d})
            if (!x.empty())
                out.second.push_back(x);
        return out;
    }

    /// Lets the cut between two people step by one line where that saves enough.
    void stepOn(const std::vector<int>& order, const Cells& r, Cut& cut) const {
        const int lo = cut.acrossX ? r.a : r.c, hi = cut.acrossX ? r.b : r.d;
        const int from = cut.acrossX ? r.c : r.a, to = cut.acrossX ? r.d : r.b;
        Cut best = cut;
        for (const int line : {cut.line - 1, cut.line}) {
            if (line < lo || line + 1 > hi)
                continue;
            for (const bool before : {true, false})
                for (int step = from + 1; step < to; ++step) {
                    Cut one = cut;
                    one.line = line;
                    one.step = step;
                    one.stepBefore = before;
                    const auto [a, b] = stepped(r, one);
                    one.cost = both(alone(order[0], a), alone(order[1], b));
                    if (one.cost.weight() < best.cost.weight() - 1e-9)
                        best = one;
                }
        }
        if (best.cost.weight() < cut.cost.weight() - kWorthStep)
            cut = best;
    }

    Rect rectOf(const Cells& r) const {
        const auto x = [&](int k) { return g_.xs[static_cast<std::size_t>(k)]; };
        const auto y = [&](int k) { return g_.ys[static_cast<std::size_t>(k)]; };
        return {x(r.a), y(r.c), x(r.b), y(r.d)};
    }

    void give(const std::vector<int>& group, const std::vector<Cells>& parts, Sharing& out) {
        if (group.size() == 1) {
            const auto k = static_cast<std::size_t>(group.front());
            for (const Cells& r : parts)
                if (!r.empty())
                    out.parts[k].push_back(rectOf(r));
            const Cost cost = alone(group.front(), parts);
            out.seconds[k] = cost.most;
            out.unreached += static_cast<int>(std::lround(cost.unreached));
            return;
        }
        const Cells r = parts.front(); // only single people have more than one
        if (r.empty())
            return;
        Cut cut = best(group, r);
        const auto order = ordered(group, cut.acrossX);
        if (group.size() == 2)
            stepOn(order, r, cut);
        const auto [a, b] = stepped(r, cut);
        give({order.begin(), order.begin() + cut.first}, a, out);
        give({order.begin() + cut.first, order.end()}, b, out);
    }

    struct Hash {
        std::size_t operator()(const std::pair<std::uint64_t, std::uint64_t>& k) const {
            std::uint64_t h = k.first * 0x9e3779b97f4a7c15ULL ^ (k.second + (k.first >> 7U));
            h *= 0xbf58476d1ce4e5b9ULL;
            return static_cast<std::size_t>(h ^ (h >> 31U));
        }
    };

    const Ground& g_;
    const std::vector<Post>& posts_;
    int columns_, rows_;
    std::vector<Sums> sums_; ///< by post
    std::unordered_map<std::pair<std::uint64_t, std::uint64_t>, Cut, Hash> known_;
    Cost single_;
};

} // namespace

Ground groundOf(const Pass& pass, std::vector<PlacedPoint> points, Length spacing,
                const PinRows* rows, bool limited, const Way& way) {
    Ground g{.fresh = pass.fresh,
             .table = pass.table,
             .points = std::move(points),
             .xs = {},
             .ys = {},
             .limited = limited,
             .secondsAPoint = secondsAPoint(way.firstWork()),
             .mostInZone = way.mostInZone};
    const Rect all = pass.fresh.bounds();
    g.xs = cutLines(all.x(), g.points, true, spacing, rows);
    g.ys = cutLines(all.y(), g.points, false, spacing, rows);
    return g;
}

Sharing shareOut(const Ground& ground, const std::vector<Post>& posts) {
    return Sharer{ground, posts}.run();
}

} // namespace bastewright::crew
