#include "planners/passes/layout.h"

#include "planners/passes/deep.h"
#include "planners/passes/layout_memory.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

/// Where no grid works, no more passes are looked for.
constexpr std::size_t kMostUnknown = 16;

/// Plans of tables smaller by so much are tried too, where a way takes so many passes.
constexpr std::array kSmaller{Length::inches(1), Length::inches(2), Length::inches(4)};
constexpr std::size_t kWorthCarrying = 6;
constexpr Length kLeastTable = Length::inches(16);
/// Inches less of reach that are tried where the middle of a table is out of reach.
constexpr int kShorter = 6;

/// So much of the top round its middle, along one axis, as the first pass has to hold: a row on
/// both sides, less where the field has no room for that.
Interval heldMiddle(const AxisLines& lines, const AxisTable& table, Length row) {
    const Length middle = lines.quilt / 2;
    const Length margin = std::min(row, table.size / 4);
    return {std::max(Length{}, middle - margin), std::min(lines.quilt, middle + margin)};
}

/// The corner of a table whose middle lies on the middle of the top.
Point onTheMiddle(const LayoutInput& in) {
    return {(in.board.x.quilt - in.lie.x.size) / 2, (in.board.y.quilt - in.lie.y.size) / 2};
}

std::optional<FirstPass> firstPass(const LayoutInput& in) {
    const Interval x = heldMiddle(in.board.x, in.lie.x, in.row);
    const Interval y = heldMiddle(in.board.y, in.lie.y, in.row);
    FirstPass out{{x.lo, y.lo, x.hi, y.hi}, {}};
    if (in.start != Basting::Start::centred)
        return out;
    const Point corner = onTheMiddle(in);
    const auto wx = windowAt(in.board.x, in.lie.x, corner.x);
    const auto wy = windowAt(in.board.y, in.lie.y, corner.y);
    if (!wx || !wy)
        return {};
    // What lies on the table whole, or with its last row pulled in, has no other middle to keep.
    const bool allX = fits(in.board.x, in.lie.x), allY = fits(in.board.y, in.lie.y);
    const Point at{allX ? lowEnd(in.board.x, in.lie.x).at : corner.x,
                   allY ? lowEnd(in.board.y, in.lie.y).at : corner.y};
    const Window w{allX ? 0 : wx->lo, allX ? in.board.x.last() : wx->hi, allY ? 0 : wy->lo,
                   allY ? in.board.y.last() : wy->hi};
    out.held = areaOf(in.board, w);
    out.fixed = at;
    return out;
}

/// What the table covers in the first pass with the middle of the quilt on its middle, or as near
/// to that as the pass has to hold.
std::optional<Window> firstWindow(const LayoutInput& in, const FirstPass& first) {
    const Point at = first.fixed.value_or(onTheMiddle(in));
    const auto x = windowAt(in.board.x, in.lie.x, at.x), y = windowAt(in.board.y, in.lie.y, at.y);
    if (!x || !y)
        return {};
    return Window{x->lo, x->hi, y->lo, y->hi};
}

/// The cheapest sequences of the fewest passes that were offered.
class Offers {
public:
    std::size_t passes() const { return all_.empty() ? 0 : all_.front().windows.size(); }
    bool empty() const { return all_.empty(); }

    void offer(std::optional<Sequence> other) {
        if (!other || (!empty() && other->windows.size() > passes()))
            return;
        if (!empty() && other->windows.size() < passes())
            all_.clear();
        const auto after = std::ranges::upper_bound(all_, other->cost, {}, &Sequence::cost);
        if (std::ranges::any_of(all_, [&](const Sequence& s) {
                return s.windows == other->windows && s.cost <= other->cost;
            }))
            return;
        all_.insert(after, *std::move(other));
        if (all_.size() > kKept)
            all_.pop_back();
    }
    void offer(std::vector<Sequence> others) {
        for (Sequence& s : others)
            offer(std::optional{std::move(s)});
    }

    Layout layout(std::size_t least) && {
        Layout out{std::move(all_.front()), least};
        out.others.assign(std::move_iterator{all_.begin() + 1}, std::move_iterator{all_.end()});
        return out;
    }

private:
    static constexpr std::size_t kKept = 8;
    std::vector<Sequence> all_;
};

std::optional<Layout> fromTheMiddle(const LayoutInput& in) {
    const auto first = firstPass(in);
    if (!first)
        return {};
    const std::size_t least = leastPasses(in.board, in.lie);
    Offers best;
    for (const auto& windows : grids(in.board, in.lie, *first))
        if (best.empty() || windows.size() <= best.passes())
            best.offer(bestOrder(in.board, in.lie, *first, windows));
    if (const auto round = firstWindow(in, *first); round && best.passes() > 5)
        for (const auto& windows : pinwheels(in.board, in.lie, *round))
            best.offer(bestOrder(in.board, in.lie, *first, windows));
    for (const auto& windows : roundTheMiddle(in.board, in.lie))
        if (in.start != Basting::Start::centred)
            best.offer(bestOrder(in.board, in.lie, *first, windows));
    if (!in.search && !best.empty())
        return std::move(best).layout(least);
    const auto search = [&](const Lie& lie, const FirstPass& from, bool briefly) {
        const std::size_t most = best.empty() ? kMostUnknown : best.passes();
        CoverSearch limits;
        if (briefly) {
            limits.nodes /= 8;
            limits.steps /= 8;
        }
        limits.stop = in.stop;
        return fewestCover(in.board, lie, from, candidates(in.board, lie, from), most, limits)
            .sequences;
    };
    best.offer(search(in.lie, *first, in.briefly));
    // What a smaller table does this one does too, and shorter arms; the search finds it there, now
    // and then.
    const auto carry = [&](const Lie& lie, bool briefly) {
        if ((!best.empty() && best.passes() < kWorthCarrying) || in.stop.stop_requested())
            return;
        const LayoutInput smaller{in.board, lie, in.start, in.row};
        if (const auto from = firstPass(smaller))
            for (const Sequence& found : search(lie, *from, briefly))
                best.offer(bestOrder(in.board, in.lie, {from->held, first->fixed}, found.windows));
    };
    for (const Length less : kSmaller)
        for (const bool across : {true, false}) {
            Lie lie = in.lie;
            Length& size = across ? lie.x.size : lie.y.size;
            size -= less;
            if (size >= kLeastTable)
                carry(lie, in.briefly);
        }
    Lie shorter = in.lie;
    for (int k = 0; k < kShorter && !in.briefly && !tooDeep(in.lie).empty(); ++k) {
        shorter.reach -= Length::inches(1);
        if (shorter.reach > Length{})
            carry(shorter, true);
    }
    if (best.empty())
        return {};
    return std::move(best).layout(least);
}

/// Chains of one axis from one end of it.
std::vector<AxisWindow> fromEnd(const AxisLines& lines, const AxisUse& use, bool high) {
    return outwardFrom(lines, use.toLow, use.toHigh,
                       high ? highEnd(lines, use.toHigh) : lowEnd(lines, use.toLow));
}

/// Rows, or columns, of windows one after another, each row from its own end.
std::vector<Window> rowByRow(const std::vector<AxisWindow>& xs, const std::vector<AxisWindow>& ys,
                             bool byRows) {
    std::vector<Window> out;
    const auto& outer = byRows ? ys : xs;
    const auto& inner = byRows ? xs : ys;
    for (const AxisWindow& o : outer)
        for (const AxisWindow& i : inner)
            out.push_back(byRows ? Window{i.lo, i.hi, o.lo, o.hi} : Window{o.lo, o.hi, i.lo, i.hi});
    return out;
}

std::optional<Layout> fromOneEnd(const LayoutInput& in) {
    Offers best;
    for (const Uses& use : usesOf(in.lie))
        for (const bool highX : {false, true})
            for (const bool highY : {false, true}) {
                const auto xs = fromEnd(in.board.x, use.x, highX);
                const auto ys = fromEnd(in.board.y, use.y, highY);
                if (xs.empty() || ys.empty() || xs.size() * ys.size() > kMostPasses)
                    continue;
                for (const bool byRows : {true, false}) {
                    const std::vector<Window> windows = rowByRow(xs, ys, byRows);
                    best.offer(inOrder(in.board, in.lie, {areaOf(in.board, windows.front()), {}},
                                       windows));
                }
            }
    if (best.empty())
        return {};
    return std::move(best).layout(leastPasses(in.board, in.lie));
}

/// A sequence of a table smaller by `less`, with what there is more of the table on either side of
/// it or half on both.
void addWhereItLay(const LayoutInput& in, const Sequence& s, Length less, bool across,
                   std::vector<Sequence>& out) {
    for (const int halves : {0, 1, 2}) {
        std::vector<Point> places;
        for (const Step& step : s.steps) {
            places.push_back(step.at);
            (across ? places.back().x : places.back().y) -= less * halves / 2;
        }
        if (auto here = inOrder(in.board, in.lie, keptFirst(in), s.windows, {}, places))
            out.push_back(*std::move(here));
    }
}

} // namespace

std::size_t leastPasses(const Board& board, const Lie& lie) {
    const Length x = lie.x.size + lie.x.row, y = lie.y.size + lie.y.row;
    std::vector<Point> points = board.points, apart;
    std::ranges::sort(points);
    for (const Point& p : points)
        if (std::ranges::all_of(
                apart, [&](const Point& a) { return abs(p.x - a.x) > x || abs(p.y - a.y) > y; }))
            apart.push_back(p);
    return std::max<std::size_t>(1, apart.size());
}

std::optional<Layout> layOut(const LayoutInput& in) {
    return in.start == Basting::Start::oneEnd ? fromOneEnd(in) : fromTheMiddle(in);
}

FirstPass keptFirst(const LayoutInput& in) {
    FirstPass out;
    if (in.start == Basting::Start::centred) {
        // The table stays where it is, but along an axis on which the top lies whole with no row
        // pulled in; what is basted of its field may shrink round the middle.
        if (const auto f = firstPass(in)) {
            const auto held = [&](const AxisLines& lines, const AxisTable& table) {
                return fits(lines, table) ? Interval{{}, lines.quilt}
                                          : heldMiddle(lines, table, in.row);
            };
            const auto whole = [](const AxisLines& lines, const AxisTable& table) {
                return fits(lines, table) && !lowEnd(lines, table).pulled;
            };
            const Interval x = held(in.board.x, in.lie.x), y = held(in.board.y, in.lie.y);
            out = {{x.lo, y.lo, x.hi, y.hi},
                   f->fixed,
                   whole(in.board.x, in.lie.x),
                   whole(in.board.y, in.lie.y)};
        }
    } else if (in.start == Basting::Start::besideMiddle) {
        if (const auto f = firstPass(in))
            out = *f;
    }
    return out;
}

Sequence evened(const LayoutInput& in, const Sequence& sequence) {
    const FirstPass first = keptFirst(in);
    Sequence best = sequence;
    // Windows that share a stretch of an axis are moved together.
    const auto ends = [](Window& w, int which) -> std::size_t& {
        return which == 0 ? w.x0 : which == 1 ? w.x1 : which == 2 ? w.y0 : w.y1;
    };
    for (int round = 0; round < 6 && !in.stop.stop_requested(); ++round) {
        bool better = false;
        for (int which = 0; which < 4; ++which) {
            std::vector<std::size_t> values;
            for (Window w : best.windows)
                values.push_back(ends(w, which));
            std::ranges::sort(values);
            values.erase(std::ranges::unique(values).begin(), values.end());
            const std::size_t last = which < 2 ? in.board.x.last() : in.board.y.last();
            for (std::size_t value : values) {
                if (value == 0 || value == last)
                    continue;
                for (const int by : {-8, -4, -2, -1, 1, 2, 4, 8}) {
                    const auto to = static_cast<std::ptrdiff_t>(value) + by;
                    if (to <= 0 || to >= static_cast<std::ptrdiff_t>(last))
                        continue;
                    std::vector<Window> moved = best.windows;
                    for (Window& w : moved)
                        if (ends(w, which) == value)
                            ends(w, which) = static_cast<std::size_t>(to);
                    if (std::ranges::any_of(
                            moved, [](const Window& w) { return w.x0 >= w.x1 || w.y0 >= w.y1; }))
                        continue;
                    auto s = inOrder(in.board, in.lie, first, moved);
                    if (s && s->cost + 1e-9 < best.cost) {
                        best = *std::move(s);
                        value = static_cast<std::size_t>(to);
                        better = true;
                    }
                }
            }
        }
        if (!better)
            break;
    }
    return best;
}

std::vector<Sequence> ofSmaller(const LayoutInput& in, LayoutMemory* memory, const StepCost& cost) {
    std::vector<Sequence> out;
    for (const Length less : {Length::inches(2), Length::inches(6)})
        for (const bool across : {true, false}) {
            Lie lie = in.lie;
            Length& size = across ? lie.x.size : lie.y.size;
            size -= less;
            if (size < kLeastTable || in.stop.stop_requested())
                continue;
            LayoutInput smaller{in.board, lie, in.start, in.row};
            smaller.briefly = true;
            smaller.stop = in.stop;
            const auto layout = memory ? memory->layOut(smaller) : layOut(smaller);
            if (!layout)
                continue;
            const Sequence even = evened(smaller, layout->sequence);
            for (const Sequence& s : {even, layout->sequence}) {
                addWhereItLay(in, s, less, across, out);
                if (const auto placed = placedFor(smaller, s, cost))
                    addWhereItLay(in, *placed, less, across, out);
                if (auto here = inOrder(in.board, in.lie, keptFirst(in), s.windows))
                    out.push_back(*std::move(here));
            }
        }
    return out;
}

std::optional<Sequence> placedFor(const LayoutInput& in, const Sequence& sequence,
                                  const StepCost& cost) {
    auto out = inOrder(in.board, in.lie, keptFirst(in), sequence.windows, cost);
    if (!out)
        return {};
    const bool same = std::ranges::equal(out->steps, sequence.steps, {}, &Step::at, &Step::at);
    return same ? std::nullopt : std::move(out);
}

} // namespace bastewright
