#include "planners/backing/layout.h"

#include "planners/backing/arrangement.h"
#include "planners/backing/column.h"

#include <algorithm>
#include <bit>
#include <numeric>
#include <tuple>

namespace bastewright::backing {
namespace {

/// Walks over all ways to take whole lengths from the bolts until the backing is wide enough, or
/// can be made so with a column.
class Enumeration {
public:
    Enumeration(const Problem& problem, const std::vector<Bolt>& bolts, LayoutSink& sink)
        : problem_{problem}
        , bolts_{bolts}
        , sink_{sink}
        , priced_{isPriced(problem.rules)}
        , seamCost_{problem.seamCost()} {
        for (const Bolt& b : bolts) {
            idle_.push_back(b.bought && outdone(b));
            widest_ = std::max(widest_, b.width);
        }
    }

    void run(bool along) {
        current_ = Layout{};
        current_.along = along;
        current_.lengths.assign(bolts_.size(), 0);
        across_ = problem_.across(along);
        height_ = problem_.height(along);
        take(0, 0, Length{});
    }

private:
    /// True where another cloth is at least as wide and as cheap, so that this one is never bought
    /// unless some of it is there already.
    bool outdone(const Bolt& b) const {
        const auto& fabrics = problem_.rules.fabrics;
        const Fabric& mine = fabrics[std::size_t(b.fabric)];
        if (mine.onHand > Length{})
            return false;
        return std::ranges::any_of(bolts_, [&](const Bolt& o) {
            const Fabric& other = fabrics[std::size_t(o.fabric)];
            if (!o.bought || o.fabric == b.fabric || o.width < b.width || other.price > mine.price)
                return false;
            return o.width > b.width || other.price < mine.price || o.fabric < b.fabric;
        });
    }

    /// `sum`: width of all lengths so far. Lengths are taken in the order of the bolts.
    void take(std::size_t from, int count, Length sum) {
        const Length seam = problem_.rules.seam;
        if (count > 0) {
            // Where they are wide enough and their seams have places, more cloth only costs more.
            if (sum - 2 * (count - 1) * seam >= across_ && emitWhole(count, sum))
                return;
            if (sum - 2 * count * seam >= 2 * across_ + 2 * widest_)
                return; // no place of the seams is wanting for cloth
            if (sink_.hopeless(costSoFar(), count))
                return;
            if (problem_.rules.column && problem_.rules.repeat <= Length{})
                emitColumns(count);
        }
        for (std::size_t b = from; b < bolts_.size(); ++b) {
            if (idle_[b] || bolts_[b].width <= 2 * seam)
                continue;
            const int most = bolts_[b].bought
                                 ? count + 64
                                 : lengthsFrom(bolts_[b].length, height_, problem_.rules);
            if (current_.lengths[b] >= most)
                continue;
            ++current_.lengths[b];
            take(b, count + 1, sum + bolts_[b].width);
            --current_.lengths[b];
        }
    }

    /// True where some way to sew them was shown, or none is wanted any more.
    bool emitWhole(int count, Length sum) {
        bool sewn = emit(count - 1);
        forEachSplit([&] {
            if (sum - 2 * count * problem_.rules.seam >= across_)
                sewn = emit(count) || sewn;
        });
        return sewn;
    }

    void emitColumns(int count) {
        const auto withStrips = [&](int strips) {
            if (sink_.hopeless(costSoFar(), strips))
                return;
            for (const ColumnWidth& c : columnWidths(problem_, bolts_, current_))
                emitColumn(strips, c);
            current_.column.reset();
        };
        withStrips(count);
        forEachSplit([&] { withStrips(count + 1); });
    }

    void emitColumn(int strips, ColumnWidth least) {
        if (problem_.unlisted && least.width <= kWidestUnlisted) {
            current_.column = Column{-1, least.width, {}, {}, least.outside};
            emit(strips);
        }
        current_.column.reset();
        for (int f = 0; f < int(problem_.rules.fabrics.size()); ++f)
            for (Column& c : columnsOf(problem_, bolts_, current_, f, least.width)) {
                c.outside = least.outside;
                current_.column = std::move(c);
                emit(strips + current_.column->blocks() - 1);
                current_.column.reset();
            }
    }

    template <class F>
    void forEachSplit(F&& use) {
        for (std::size_t b = 0; b < bolts_.size(); ++b) {
            if (current_.lengths[b] == 0 ||
                bolts_[b].width / 2 - problem_.rules.seam < problem_.rules.leastPiece)
                continue;
            current_.splitBolt = int(b);
            use();
        }
        current_.splitBolt = -1;
    }

    /// Cloth the layout in hand takes from a bolt.
    Length cutFrom(std::size_t b, bool printGoesOn) const {
        Length cut = clothFor(current_.lengths[b], height_, problem_.rules);
        // A second bolt of a matching print does not start at the same place of the print.
        if (printGoesOn && cut > Length{})
            cut += problem_.rules.repeat;
        if (current_.column)
            for (const Blocks* blocks : {&current_.column->fromHand, &current_.column->fromBought})
                if (blocks->count > 0 && blocks->bolt == int(b))
                    cut += problem_.rules.squaring + blocks->cloth;
        return cut;
    }

    /// False where its seams have no place.
    bool emit(int seams) {
        const Backing& rules = problem_.rules;
        double cost = 0, area = 0;
        std::uint64_t used = 0; // by fabric; bolts on hand come first
        buy_.assign(rules.fabrics.size(), Length{});
        for (std::size_t b = 0; b < bolts_.size(); ++b) {
            const auto f = std::size_t(bolts_[b].fabric);
            const Length cut = cutFrom(b, bolts_[b].bought && (used >> f & 1) != 0);
            if (cut == Length{})
                continue;
            used |= std::uint64_t{1} << f;
            Length taken = cut;
            if (bolts_[b].bought) {
                taken = buy_[f] = toBuy(cut, rules, problem_.unit);
                cost +=
                    priced_ ? priceOf(taken, rules.fabrics[f].price, problem_.unit) : taken.in();
            }
            area += taken.in() * rules.fabrics[f].usableWidth.in();
        }
        if (sink_.hopeless(cost, seams))
            return true;
        Layout l = current_;
        l.buy = buy_;
        l.bought = std::accumulate(buy_.begin(), buy_.end(), Length{});
        l.cost = cost;
        l.waste = area - across_.in() * height_.in();
        if (l.column && l.column->fabric < 0) // its cloth is nobody's count
            l.waste += (l.column->width - 2 * rules.seam).in() * height_.in();
        l.seams = seams;
        l.score = cost + seams * seamCost_;
        l.cloths = std::popcount(used) + (l.column && l.column->fabric < 0);
        return sink_.offer(l);
    }

    /// What the whole lengths taken so far cost at least.
    double costSoFar() const {
        double cost = 0;
        for (std::size_t b = 0; b < bolts_.size(); ++b)
            if (bolts_[b].bought && current_.lengths[b] > 0) {
                const Fabric& f = problem_.rules.fabrics[std::size_t(bolts_[b].fabric)];
                const Length cut = clothFor(current_.lengths[b], height_, problem_.rules);
                const Length buy = toBuy(cut, problem_.rules, problem_.unit);
                cost += priced_ ? priceOf(buy, f.price, problem_.unit) : buy.in();
            }
        return cost;
    }

    const Problem& problem_;
    const std::vector<Bolt>& bolts_;
    LayoutSink& sink_;
    const bool priced_;
    const double seamCost_;
    std::vector<bool> idle_;
    std::vector<Length> buy_;
    Layout current_;
    Length across_, height_, widest_;
};

} // namespace

double Problem::seamCost() const {
    std::optional<double> cheapest;
    if (isPriced(rules))
        for (const Fabric& f : rules.fabrics)
            if (f.buyable)
                cheapest = std::min(cheapest.value_or(f.price), f.price);
    return cheapest ? priceOf(rules.seamWorth, *cheapest, unit) : rules.seamWorth.in();
}

bool better(const Layout& a, const Layout& b) {
    const auto rank = [](const Layout& l) {
        return std::tuple(l.score, l.column && l.column->outside, l.seams, l.waste, l.cloths,
                          !l.along);
    };
    return rank(a) < rank(b);
}

bool isPriced(const Backing& rules) {
    return std::ranges::all_of(rules.fabrics,
                               [](const Fabric& f) { return !f.buyable || f.price > 0; });
}

void visitLayouts(const Problem& problem, const std::vector<Bolt>& bolts, LayoutSink& sink) {
    Enumeration all{problem, bolts, sink};
    all.run(true);
    // A print with one way up lies upright only with the cloth along the quilt.
    if (!problem.rules.oneWay)
        all.run(false);
}

} // namespace bastewright::backing
