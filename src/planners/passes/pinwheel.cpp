#include "planners/passes/pinwheel.h"

#include "planners/passes/placing.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

constexpr Length kLeastMiddle = Length::inches(12);
/// Up to so many passes, arms that differ from those opposite are tried; more take too long to try.
constexpr std::size_t kMostUnlike = 16;

/// Steps of an arm across the quilt and down it.
struct Steps {
    std::int64_t across = 1, down = 1;
    std::size_t areas() const { return static_cast<std::size_t>(across * down); }
};

struct Arms {
    Steps head, right, foot, left;
};

/// Where the middle may begin and end along an axis.
struct Edges {
    Interval lo, hi;
};

/// How long an arm of so many steps may be that has no basted area at its end.
Length early(const AxisRoom& r, std::int64_t steps) {
    return steps == 1 ? r.field : steps * (r.field - r.anchor);
}

/// The middle of a centred pinwheel: as large as the arms and the field allow, or up to the
/// outermost pair of seams.
std::optional<Interval> centredMiddle(const AxisRoom& r, const Edges& e,
                                      const std::vector<Length>& seams) {
    const Length middle = r.quilt / 2;
    const Length least = std::max({middle - e.lo.hi, e.hi.lo - middle, kLeastMiddle / 2});
    const Length most = std::min({middle - e.lo.lo, e.hi.hi - middle, r.field / 2});
    if (most < least)
        return {};
    Length half = most;
    for (const Length s : seams)
        if (s - middle >= least && s - middle <= most &&
            std::ranges::binary_search(seams, r.quilt - s))
            half = s - middle;
    return Interval{middle - half, r.quilt - middle + half};
}

/// The middle that lies nearest the quilt's, such that the field also holds what is round the
/// quilt's middle.
std::optional<Interval> freeMiddle(const AxisRoom& r, const Edges& e) {
    const Interval held = heldMiddle(r);
    std::optional<Interval> best;
    for (const Length lo :
         {e.lo.lo, e.lo.hi, std::clamp(r.quilt / 2 - r.field / 2, e.lo.lo, e.lo.hi)})
        for (const Length hi :
             {e.hi.lo, e.hi.hi, std::clamp(r.quilt / 2 + r.field / 2, e.hi.lo, e.hi.hi)}) {
            const Length span = std::max(hi, held.hi) - std::min(lo, held.lo);
            if (hi - lo < kLeastMiddle || span > r.field)
                continue;
            const auto off = [&](Interval i) { return abs(i.middle() - r.quilt / 2); };
            if (!best || off({lo, hi}) < off(*best))
                best = Interval{lo, hi};
        }
    return best;
}

/// Nothing where the middle would be a scrap or larger than the field.
std::optional<Interval> middle(const LayoutInput& in, const AxisRoom& r, const Edges& e,
                               const std::vector<Length>& seams) {
    if (r.quilt <= r.field || e.lo.lo > e.lo.hi || e.hi.lo > e.hi.hi)
        return {};
    return in.start == Basting::Start::centred ? centredMiddle(r, e, seams) : freeMiddle(r, e);
}

/// Cuts a block of the top that lies outward of basted area into near-equal areas, growing to the
/// right (or left) and down (or up), each needing the one before it.
void addArm(const LayoutInput& in, const Rect& block, Steps steps, bool rightward, bool downward,
            Layout& out) {
    const Length ux = in.surface.field.width(), uy = in.surface.field.length();
    std::vector<std::vector<std::size_t>> index(static_cast<std::size_t>(steps.down));
    const auto cut = [](Interval whole, std::int64_t parts, std::int64_t i, bool forward) {
        const std::int64_t k = forward ? i : parts - 1 - i;
        return Interval{whole.lo + whole.size() * k / parts,
                        whole.lo + whole.size() * (k + 1) / parts};
    };
    for (std::int64_t row = 0; row < steps.down; ++row)
        for (std::int64_t column = 0; column < steps.across; ++column) {
            const Interval x = cut(block.x(), steps.across, column, rightward);
            const Interval y = cut(block.y(), steps.down, row, downward);
            // The outer edges lie at the outer edges of the field, the anchor is on the inner
            // sides.
            FreshArea area = placed(in, {x.lo, y.lo, x.hi, y.hi},
                                    {rightward ? x.hi - ux : x.lo, downward ? y.hi - uy : y.lo});
            if (row == 0 && column == 0)
                area.needs.push_back(0);
            if (column > 0)
                area.needs.push_back(index[static_cast<std::size_t>(row)].back());
            if (row > 0)
                area.needs.push_back(
                    index[static_cast<std::size_t>(row - 1)][static_cast<std::size_t>(column)]);
            index[static_cast<std::size_t>(row)].push_back(out.areas.size());
            out.areas.push_back(std::move(area));
        }
}

std::optional<Layout> wheel(const LayoutInput& in, const Arms& arms) {
    const AxisRoom rx = roomX(in), ry = roomY(in);
    const Length sx = rx.field - rx.anchor, sy = ry.field - ry.anchor;
    const Length w = in.top.width, h = in.top.length;
    // Head and foot reach over the middle from either side, right and left from above and below.
    const auto x = middle(
        in, rx,
        {{std::max(Length{}, w - early(rx, arms.foot.across)), std::min(w, arms.left.across * sx)},
         {std::max(Length{}, w - arms.right.across * sx),
          std::min(w, early(rx, arms.head.across))}},
        in.seamsX);
    if (!x)
        return {};
    const auto y = middle(
        in, ry,
        {{std::max(Length{}, h - arms.left.down * sy), std::min(h, arms.head.down * sy)},
         {std::max(Length{}, h - arms.foot.down * sy), std::min(h, early(ry, arms.right.down))}},
        in.seamsY);
    if (!y || x->lo <= Length{} || x->hi >= w || y->lo <= Length{} || y->hi >= h)
        return {};
    Layout out;
    out.shape = Shape::pinwheel;
    const Interval fx = firstFieldAround(in.start, rx, *x), fy = firstFieldAround(in.start, ry, *y);
    out.areas.push_back(placed(in, {x->lo, y->lo, x->hi, y->hi}, {fx.lo, fy.lo}));
    std::vector<std::size_t> from; // where each arm begins
    const auto arm = [&](const Rect& block, Steps steps, bool rightward, bool downward) {
        from.push_back(out.areas.size());
        addArm(in, block, steps, rightward, downward, out);
        if (from.size() < 2)
            return;
        for (std::size_t i = from.back(); i < out.areas.size(); ++i)
            for (std::size_t k = from[from.size() - 2]; k < from.back(); ++k)
                if (touch(out.areas[i].fresh, out.areas[k].fresh))
                    out.areas[i].needs.push_back(k);
    };
    arm({{}, {}, x->hi, y->lo}, arms.head, false, false);
    arm({x->hi, {}, w, y->hi}, arms.right, true, false);
    arm({x->lo, y->hi, w, h}, arms.foot, true, true);
    arm({{}, y->lo, x->lo, h}, arms.left, false, true);
    return out;
}

} // namespace

std::optional<Layout> pinwheel(const LayoutInput& in, std::size_t most) {
    std::optional<Layout> best;
    const auto steps = std::max(freeCount(roomX(in)), freeCount(roomY(in))) + 1;
    // Round a centred middle, opposite arms differ only by the end of the last.
    const bool alike = in.start == Basting::Start::centred || most > kMostUnlike;
    // Each arm in turn takes every number of steps that leaves one for each arm after it.
    const auto choose = [&](const auto& self, std::array<Steps, 4>& arms, std::size_t arm,
                            std::size_t passes) -> void {
        if (arm == arms.size()) {
            if (auto found = wheel(in, {arms[0], arms[1], arms[2], arms[3]})) {
                most = passes;
                best = std::move(found);
            }
            return;
        }
        for (std::int64_t across = 1; across <= steps; ++across)
            for (std::int64_t down = 1; down <= steps; ++down) {
                if (alike && arm == 2 && (across != arms[0].across || down != arms[0].down))
                    continue;
                if (alike && arm == 3 && (across != arms[1].across || down < arms[1].down))
                    continue;
                const Steps now{across, down};
                if (passes + now.areas() + (arms.size() - 1 - arm) >= most)
                    break;
                arms[arm] = now;
                self(self, arms, arm + 1, passes + now.areas());
            }
    };
    std::array<Steps, 4> arms;
    choose(choose, arms, 0, 1);
    return best;
}

} // namespace bastewright
