#include "planners/points/row_options.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

// Shares of the spacing between which steps and gaps are tried. The thinnest rows lie 1.5 r = 1.06
// spacings apart with a point every √3 r = 1.22 spacings, the flattest the other way round.
constexpr double kLeastStep = 0.8, kMostStep = 1.45;

/// How far a point's middle keeps from seams across the row and along it, and from the edges.
struct Rooms {
    double crossing, alongside, ends, sides;
};

Rooms roomsFor(const PinRule& pin, Lie lie) {
    const double half = pin.halfLength(), slant = half * std::sqrt(0.5), clear = pin.clear();
    const bool seams = !pin.seamless();
    const auto room = [&](double reach) { return seams ? clear + reach : 0.0; };
    switch (lie) {
    case Lie::along:
        return {room(half), room(0), pin.edge() + half, pin.edge()};
    case Lie::across:
        return {room(0), room(half), pin.edge(), pin.edge() + half};
    case Lie::aslant:
        return {room(slant), room(slant), pin.edge() + slant, pin.edge() + slant};
    case Lie::anyhow:
        break;
    }
    return {0, 0, pin.edge() + half, pin.edge()};
}

/// Figures between the least and the most, each at its plainest level.
std::vector<std::pair<double, int>> figures(const Rules& rules, const RowFrame& frame,
                                            const Measures& measures, bool quick) {
    std::vector<std::pair<double, int>> out;
    const auto levels = std::min<std::size_t>(measures.units.size(), quick ? 2 : 9);
    for (std::size_t level = 0; level < levels; ++level) {
        const double unit = std::max(measures.units[level], frame.fine());
        for (double f = std::ceil(kLeastStep * rules.spacing / unit - 1e-9) * unit;
             f <= kMostStep * rules.spacing + 1e-9; f += unit)
            if (std::ranges::none_of(out,
                                     [&](const auto& o) { return std::abs(o.first - f) < 1e-6; }))
                out.emplace_back(f, int(level));
    }
    return out;
}

/// A mark every `step` from `from` on, each where it is clear, none twice or too near another.
std::vector<int> marked(const ClearLines& lines, double from, double step, double fine, int gap) {
    std::vector<int> out;
    for (double at = from; at <= lines.last() * fine + step / 2; at += step) {
        if (at > (lines.last() + 0.5) * fine)
            break;
        const int i = lines.nearest(at);
        if (out.empty() || i - out.back() >= gap)
            out.push_back(i);
    }
    return out;
}

class RibbonMaker {
public:
    RibbonMaker(const Rules& rules, const RowFrame& frame, const ClearLines& lines,
                const StripCover& cover, bool all, std::vector<RibbonOption>& out)
        : frame_{frame}
        , lines_{lines}
        , cover_{cover}
        , all_{all}
        , out_{out}
        , reach_{rules.radius + 1.5 * rules.spacing}
        , least_{kLeastStep * rules.spacing}
        , gap_{std::max(1, int(std::ceil(rules.gap / frame.fine() - 1e-9)))} {}

    void make(double from, double step, int level) {
        const double fine = frame_.fine();
        RibbonOption option;
        option.step = step;
        option.level = level;
        option.marks = {marked(lines_, from, step, fine, gap_),
                        marked(lines_, from + step / 2, step, fine, gap_)};
        if (option.marks.odd.empty() || option.marks.even.empty())
            return;
        if (cover_.widest(option.marks, reach_, frame_.across() - reach_) < least_)
            return;
        for (const End head : kEnds) {
            RibbonOption begun = option;
            if (!atHead(begun.marks, head))
                continue;
            for (const End foot : kEnds) {
                RibbonOption ended = begun;
                if (atFoot(ended.marks, foot))
                    keep(std::move(ended));
            }
        }
    }

private:
    /// What is done with the ribbon that begins (ends) later inside.
    enum class End { leave, move, add };
    static constexpr End kEnds[] = {End::leave, End::move, End::add};

    bool atHead(RibbonMarks& marks, End how) const {
        if (how == End::leave)
            return true;
        auto& late = marks.odd.front() > marks.even.front() ? marks.odd : marks.even;
        if (how == End::move && late.size() > 1)
            late.erase(late.begin());
        const int before = late.front() - gap_;
        late.insert(late.begin(), lines_.first());
        const auto place = [&]() -> int& { return late.front(); };
        return bestPlace(marks, place, lines_.first(), before, 0, reach_);
    }
    bool atFoot(RibbonMarks& marks, End how) const {
        if (how == End::leave)
            return true;
        auto& late = marks.odd.back() < marks.even.back() ? marks.odd : marks.even;
        if (how == End::move && late.size() > 1)
            late.pop_back();
        const int after = late.back() + gap_;
        late.push_back(lines_.last());
        const auto place = [&]() -> int& { return late.back(); };
        return bestPlace(marks, place, after, lines_.last(), frame_.across() - reach_,
                         frame_.across());
    }
    /// The place between two, from which the end is held best.
    template <class Place>
    bool bestPlace(const RibbonMarks& marks, Place place, int lo, int hi, double from,
                   double to) const {
        int best = -1;
        double most = 0;
        for (int i = lo; i <= hi; ++i) {
            if (!lines_.allowed(i))
                continue;
            place() = i;
            if (const double w = cover_.widest(marks, from, to); w > most + 1e-9) {
                most = w;
                best = i;
            }
        }
        if (best < 0)
            return false;
        place() = best;
        return true;
    }
    void keep(RibbonOption option) {
        option.widest = cover_.widest(option.marks);
        if (option.widest < least_)
            return;
        option.edgeOdd = cover_.edge(option.marks.odd);
        option.edgeEven = cover_.edge(option.marks.even);
        if (!all_) {
            if (std::ranges::any_of(out_, [&](const RibbonOption& o) { return asGood(o, option); }))
                return;
            std::erase_if(out_, [&](const RibbonOption& o) { return asGood(option, o); });
        }
        out_.push_back(std::move(option));
    }
    static bool asGood(const RibbonOption& a, const RibbonOption& b) {
        return a.level <= b.level && a.marks.odd.size() <= b.marks.odd.size() &&
               a.marks.even.size() <= b.marks.even.size() && a.widest >= b.widest - 1e-9 &&
               a.edgeOdd >= b.edgeOdd - 1e-9 && a.edgeEven >= b.edgeEven - 1e-9;
    }

    const RowFrame& frame_;
    const ClearLines& lines_;
    const StripCover& cover_;
    bool all_;
    std::vector<RibbonOption>& out_;
    double reach_, least_;
    int gap_;
};

bool asGood(const RowsOption& a, const RowsOption& b) {
    return a.level <= b.level && a.rows.size() <= b.rows.size() && a.widest <= b.widest + 1e-9 &&
           a.first <= b.first + 1e-9 && a.last <= b.last + 1e-9;
}

void keep(std::vector<RowsOption>& of, RowsOption option, bool all) {
    if (!all) {
        if (std::ranges::any_of(of, [&](const RowsOption& o) { return asGood(o, option); }))
            return;
        std::erase_if(of, [&](const RowsOption& o) { return asGood(option, o); });
    }
    of.push_back(std::move(option));
}

RowsOption measured(std::vector<int> rows, double gap, int level, const RowFrame& frame) {
    RowsOption out{std::move(rows), gap, level, 0, 0, 0};
    for (std::size_t i = 1; i < out.rows.size(); ++i)
        out.widest = std::max(out.widest, (out.rows[i] - out.rows[i - 1]) * frame.fine());
    out.first = out.rows.front() * frame.fine();
    out.last = frame.down() - out.rows.back() * frame.fine();
    return out;
}

} // namespace

RowOptions rowOptions(const Rules& rules, const RowFrame& frame, Lie lie, const Measures& measures,
                      RowEffort effort) {
    RowOptions out;
    const double fine = frame.fine();
    const Rooms rooms = roomsFor(rules.pin, lie);
    const ClearLines across{frame.across(), fine, frame.crossing(), rooms.crossing, rooms.ends};
    const ClearLines down{frame.down(), fine, frame.alongside(), rooms.alongside, rooms.sides};
    if (!across.any() || !down.any())
        return out;
    const StripCover cover{rules.radius, fine, frame.across()};
    const double beginnings = effort.quick ? 4 * fine : effort.all ? 2 * fine : fine;
    const auto all = figures(rules, frame, measures, effort.quick);
    RibbonMaker maker{rules, frame, across, cover, effort.all, out.ribbons};
    for (const auto& [step, level] : all)
        for (double from = across.first() * fine; from <= across.first() * fine + step / 2;
             from += beginnings)
            maker.make(from, step, level);
    const int gap = std::max(1, int(std::ceil(rules.gap / fine - 1e-9)));
    for (const auto& [step, level] : all)
        for (double from = down.first() * fine; from <= rules.radius; from += fine) {
            std::vector<int> rows = marked(down, from, step, fine, gap);
            if (rows.empty())
                continue;
            keep(out.rows, measured(rows, step, level, frame), effort.all);
            if (const int end = down.last(); end - rows.back() >= gap) {
                rows.push_back(end);
                keep(out.rows, measured(std::move(rows), step, level, frame), effort.all);
            }
        }
    return out;
}

} // namespace bastewright::points
