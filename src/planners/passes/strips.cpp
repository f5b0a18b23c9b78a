#include "planners/passes/strips.h"

#include "planners/passes/placing.h"
#include "planners/passes/strip_lines.h"

#include <algorithm>

// After any number of strips the basted part is least when all that is left over is in the strips
// to come, each as thick as the field allows: a side with j strips to come then lies j steps inside
// the edge. All sides are least at once, and a strip takes fewest passes along the shortest side,
// so the fewest passes follow from how many strips are still to come on each side: a shortest way
// through these counts. The boundaries are then evened out as far as no strip takes another pass.

namespace bastewright {
namespace {

/// Strips that are still to come, on each side.
using ToCome = PerSide<std::int64_t>;

class StripSearch {
public:
    explicit StripSearch(const LayoutInput& in)
        : in_{in}
        , x_{roomX(in), in.start == Basting::Start::centred, in.seamsX}
        , y_{roomY(in), in.start == Basting::Start::centred, in.seamsY} {}

    std::optional<Layout> fewest(std::size_t most) {
        // One strip more on a side than it takes may spare two along the others.
        forSides(x_, [&](std::int64_t left, std::int64_t right) {
            forSides(y_, [&](std::int64_t head, std::int64_t foot) {
                const ToCome all{head, foot, left, right};
                if (static_cast<std::size_t>(1 + left + right + head + foot) < most)
                    tryFirst(all, most);
            });
        });
        if (best_.empty())
            return {};
        evenOut();
        return layout();
    }

private:
    template <class Try>
    static void forSides(const StripAxis& a, const Try& attempt) {
        const std::int64_t most = ceilDiv(a.room.quilt, a.step()) + 1;
        for (std::int64_t before = 0; before <= most; ++before)
            for (std::int64_t after = 0; after <= most; ++after) {
                if (a.centred && before != after)
                    continue;
                if ((before + after) * a.step() + a.room.field < a.room.quilt)
                    continue; // too few to cover it
                if (before + after > 0 && (before + after - 2) * a.step() > a.room.quilt)
                    break; // more than one too many on each side
                attempt(before, after);
            }
    }

    static std::int64_t pieces(const StripAxis& along, Interval extent) {
        AxisRoom room = along.room;
        room.quilt = extent.size();
        return freeCount(room);
    }

    /// Passes of the strip that comes next on `side`.
    std::int64_t cost(Side side, const ToCome& left, const StripLines& x,
                      const StripLines& y) const {
        return isAcross(side) ? pieces(x_, x.extent(left.left, left.right))
                              : pieces(y_, y.extent(left.head, left.foot));
    }

    void tryFirst(const ToCome& all, std::size_t& most) {
        const auto leastX = leastLines(x_, all.left, all.right);
        const auto leastY = leastLines(y_, all.head, all.foot);
        if (!leastX || !leastY)
            return;
        const StripLines &x = *leastX, &y = *leastY;
        // Counts to come, from the outermost strip inward: the least passes of all that follow.
        const auto at = [&](const ToCome& t) {
            return static_cast<std::size_t>(
                ((t.left * (all.right + 1) + t.right) * (all.head + 1) + t.head) * (all.foot + 1) +
                t.foot);
        };
        std::vector<std::int64_t> passes(at(all) + 1, 0);
        std::vector<Side> next(at(all) + 1, Side::head);
        ToCome t;
        for (t.left = 0; t.left <= all.left; ++t.left)
            for (t.right = 0; t.right <= all.right; ++t.right)
                for (t.head = 0; t.head <= all.head; ++t.head)
                    for (t.foot = 0; t.foot <= all.foot; ++t.foot) {
                        bool found = false;
                        for (const Side side : kSides) {
                            if (t[side] == 0)
                                continue;
                            ToCome then = t;
                            --then[side];
                            const auto with = cost(side, t, x, y) + passes[at(then)];
                            if (!found || with < passes[at(t)]) {
                                passes[at(t)] = with;
                                next[at(t)] = side;
                                found = true;
                            }
                        }
                    }
        if (const auto total = static_cast<std::size_t>(1 + passes[at(all)]); total < most) {
            most = total;
            all_ = all;
            leastX_ = linesX_ = x;
            leastY_ = linesY_ = y;
            best_.clear();
            for (ToCome s = all; at(s) != 0;) {
                best_.push_back(next[at(s)]);
                --s[next[at(s)]];
            }
        }
    }

    /// Whether boundaries keep every strip in the field, and in no more passes than the least ones.
    bool keep(const StripLines& x, const StripLines& y) const {
        if (!fitsField(x_, x) || !fitsField(y_, y))
            return false;
        ToCome t = all_;
        for (const Side side : best_) {
            if (cost(side, t, x, y) > cost(side, t, leastX_, leastY_))
                return false;
            --t[side];
        }
        return true;
    }

    void evenOut() {
        for (int quarters = 4; quarters > 0; --quarters) {
            const StripLines x = evened(x_, leastX_, quarters), y = evened(y_, leastY_, quarters);
            if (keep(x, y)) {
                linesX_ = x;
                linesY_ = y;
                break;
            }
        }
        snap(x_, linesX_);
        snap(y_, linesY_);
    }

    /// Moves boundaries to seams no farther than a third of a share away, where that costs no pass.
    void snap(const StripAxis& a, StripLines& lines) const {
        const auto runs = std::ssize(lines.lo) + std::ssize(lines.hi) - 1;
        const Length most = a.room.quilt / runs / 3;
        const auto trySeams = [&](auto move, Length now) {
            std::vector<Length> near;
            for (const Length s : a.seams)
                if (abs(s - now) <= most)
                    near.push_back(s);
            std::ranges::stable_sort(near, {}, [&](Length s) { return abs(s - now); });
            const StripLines before = lines;
            for (const Length s : near) {
                move(s);
                if (keep(linesX_, linesY_))
                    return;
                lines = before;
            }
        };
        for (std::size_t j = 1; j < lines.lo.size(); ++j)
            trySeams(
                [&](Length s) {
                    lines.lo[j] = s;
                    if (a.centred)
                        lines.hi[j] = a.room.quilt - s;
                },
                lines.lo[j]);
        for (std::size_t j = 1; !a.centred && j < lines.hi.size(); ++j)
            trySeams([&](Length s) { lines.hi[j] = s; }, lines.hi[j]);
    }

    Layout layout() const {
        Layout out;
        out.shape = Shape::strips;
        const Interval x = linesX_.first(), y = linesY_.first();
        out.areas.push_back(placed(in_, {x.lo, y.lo, x.hi, y.hi},
                                   {firstFieldAround(in_.start, x_.room, x).lo,
                                    firstFieldAround(in_.start, y_.room, y).lo}));
        ToCome t = all_;
        for (const Side side : best_) {
            addStrip(side, t, out);
            --t[side];
        }
        return out;
    }

    void addStrip(Side side, const ToCome& t, Layout& out) const {
        const Interval x = linesX_.extent(t.left, t.right), y = linesY_.extent(t.head, t.foot);
        ToCome then = t;
        --then[side];
        const Interval wider = isAcross(side) ? linesY_.extent(then.head, then.foot)
                                              : linesX_.extent(then.left, then.right);
        const StripAxis& axis = isAcross(side) ? x_ : y_;
        const Interval along = isAcross(side) ? x : y;
        AxisRoom room = axis.room;
        room.quilt = along.size();
        std::vector<Length> seams;
        for (const Length s : axis.seams)
            if (s > along.lo && s < along.hi)
                seams.push_back(s - along.lo);
        const AxisCuts cuts = freeCuts(room, seams);
        const Rect& field = in_.surface.field;
        const std::size_t begin = out.areas.size();
        for (std::size_t i = 0; i < cuts.runs(); ++i) {
            const Interval run{along.lo + cuts.run(i).lo, along.lo + cuts.run(i).hi};
            const Length at = along.lo + fieldStart(cuts, i, axis.room.field);
            FreshArea area;
            switch (side) {
            case Side::head:
                area = placed(in_, {run.lo, wider.lo, run.hi, y.lo}, {at, wider.lo});
                break;
            case Side::foot:
                area =
                    placed(in_, {run.lo, y.hi, run.hi, wider.hi}, {at, wider.hi - field.length()});
                break;
            case Side::left:
                area = placed(in_, {wider.lo, run.lo, x.lo, run.hi}, {wider.lo, at});
                break;
            case Side::right:
                area =
                    placed(in_, {x.hi, run.lo, wider.hi, run.hi}, {wider.hi - field.width(), at});
                break;
            }
            for (std::size_t k = 0; k < begin; ++k)
                if (touch(area.fresh, out.areas[k].fresh))
                    area.needs.push_back(k);
            if (i != cuts.first)
                area.needs.push_back(begin + (i < cuts.first ? i + 1 : i - 1));
            out.areas.push_back(std::move(area));
        }
    }

    const LayoutInput& in_;
    StripAxis x_, y_;
    ToCome all_;
    StripLines leastX_, leastY_, linesX_, linesY_;
    std::vector<Side> best_; ///< in working order; empty where nothing was found
};

} // namespace

std::optional<Layout> strips(const LayoutInput& in, std::size_t most) {
    return StripSearch{in}.fewest(most);
}

} // namespace bastewright
