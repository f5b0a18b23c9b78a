#include "planners/backing/layout.h"

#include "planners/backing/column.h"

#include <algorithm>
#include <tuple>

namespace bastewright::backing {
namespace {

/// Walks over all ways to take whole lengths from the bolts until the backing is wide enough, or
/// can be made so with a column.
class Enumeration {
public:
    Enumeration(const Problem& problem, const std::vector<Bolt>& bolts, std::vector<Layout>& out)
        : problem_{problem}
        , bolts_{bolts}
        , out_{out}
        , priced_{std::ranges::all_of(problem.rules.fabrics,
                                      [](const Fabric& f) { return !f.buyable || f.price > 0; })} {
        for (const Bolt& b : bolts)
            idle_.push_back(b.bought && outdone(b));
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
            if (sum - 2 * (count - 1) * seam >= across_) {
                emitWhole(count, sum);
                return;
            }
            if (problem_.rules.column && problem_.rules.repeat <= Length{})
                emitColumns(count, sum);
        }
        for (std::size_t b = from; b < bolts_.size(); ++b) {
            if (idle_[b] || bolts_[b].width - 2 * seam < kLeastStrip)
                continue;
            const int most = bolts_[b].bought
                                 ? count + 64
                                 : panelsFrom(bolts_[b].length, height_, problem_.rules.repeat);
            if (current_.lengths[b] >= most)
                continue;
            ++current_.lengths[b];
            take(b, count + 1, sum + bolts_[b].width);
            --current_.lengths[b];
        }
    }

    void emitWhole(int count, Length sum) {
        emit(count - 1);
        forEachSplit([&] {
            if (sum - 2 * count * problem_.rules.seam >= across_)
                emit(count);
        });
    }

    void emitColumns(int count, Length sum) {
        const Length seam = problem_.rules.seam;
        const auto withStrips = [&](int strips) {
            const Length width =
                std::max(across_ + 2 * strips * seam - sum, kLeastStrip + 2 * seam);
            if (problem_.unlisted && width <= kWidestUnlisted) {
                current_.column = Column{-1, width, {}, {}};
                emit(strips);
            }
            for (int f = 0; f < int(problem_.rules.fabrics.size()); ++f)
                for (Column& c : columnsOf(problem_, bolts_, current_, f, width)) {
                    current_.column = std::move(c);
                    emit(strips + current_.column->blocks() - 1);
                }
            current_.column.reset();
        };
        withStrips(count);
        forEachSplit([&] { withStrips(count + 1); });
    }

    template <class F>
    void forEachSplit(F&& use) {
        for (std::size_t b = 0; b < bolts_.size(); ++b) {
            if (current_.lengths[b] == 0 ||
                bolts_[b].width / 2 - 2 * problem_.rules.seam < kLeastStrip)
                continue;
            current_.splitBolt = int(b);
            use();
        }
        current_.splitBolt = -1;
    }

    void emit(int seams) {
        const Backing& rules = problem_.rules;
        Layout l = current_;
        l.seams = seams;
        l.buy.assign(rules.fabrics.size(), Length{});
        std::vector<bool> used(rules.fabrics.size());
        double area = 0;
        for (std::size_t b = 0; b < bolts_.size(); ++b) {
            const Bolt& bolt = bolts_[b];
            const auto f = std::size_t(bolt.fabric);
            Length cut = clothFor(l.lengths[b], height_, rules.repeat);
            // A second bolt of a matching print does not start at the same place of the print.
            if (bolt.bought && cut > Length{} && used[f])
                cut += rules.repeat;
            if (l.column)
                for (const Blocks* blocks : {&l.column->fromHand, &l.column->fromBought})
                    if (blocks->bolt == int(b))
                        cut += blocks->cloth;
            if (cut == Length{})
                continue;
            used[f] = true;
            const Length width = rules.fabrics[f].usableWidth;
            if (bolt.bought) {
                l.buy[f] = toBuy(cut, rules, problem_.unit);
                l.bought += l.buy[f];
                l.cost += priced_ ? priceOf(l.buy[f], rules.fabrics[f].price, problem_.unit)
                                  : l.buy[f].in();
                area += l.buy[f].in() * width.in();
            } else {
                area += cut.in() * width.in();
            }
        }
        l.waste = area - across_.in() * height_.in();
        l.cloths = int(std::ranges::count(used, true));
        out_.push_back(std::move(l));
    }

    const Problem& problem_;
    const std::vector<Bolt>& bolts_;
    std::vector<Layout>& out_;
    const bool priced_;
    std::vector<bool> idle_;
    Layout current_;
    Length across_, height_;
};

} // namespace

bool better(const Layout& a, const Layout& b) {
    const auto rank = [](const Layout& l) {
        return std::tuple(l.cost, l.waste, l.seams, l.cloths, !l.along);
    };
    return rank(a) < rank(b);
}

std::vector<Layout> layoutsOf(const Problem& problem, const std::vector<Bolt>& bolts) {
    std::vector<Layout> out;
    Enumeration all{problem, bolts, out};
    all.run(true);
    // A print with one way up lies upright only with the cloth along the quilt.
    if (!problem.rules.oneWay)
        all.run(false);
    std::ranges::stable_sort(out, better);
    return out;
}

} // namespace bastewright::backing
