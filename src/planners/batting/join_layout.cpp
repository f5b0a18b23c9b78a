#include "planners/batting/join_layout.h"

#include "planners/batting/join_orders.h"

#include <algorithm>
#include <tuple>

namespace bastewright::batting {
namespace {

class Layer {
public:
    Layer(Size finished, Length overlap)
        : finished_{finished}
        , overlap_{overlap}
        , target_{(finished.width - overlap).nm(), (finished.length - overlap).nm()} {}

    void place(const Sized& s, std::int64_t x = 0, std::int64_t y = 0) {
        const std::int64_t from[2] = {x, y};
        if (s.parts.empty()) {
            out.pieces.push_back({s.row->item, s.row->turned, rect(from, s.size)});
            return;
        }
        const int axis = s.row->axis();
        std::int64_t at[2] = {x, y};
        std::vector<Segment> own;
        for (const std::size_t i : s.order) {
            if (i != s.order.front()) {
                const std::int64_t line[2] = {axis == 0 ? 0 : s.size[0], axis == 0 ? s.size[1] : 0};
                const Rect r = rect(at, line);
                own.push_back({{r.x0, r.y0}, {r.x1, r.y1}});
            }
            place(s.parts[i], at[0], at[1]);
            at[axis] += s.parts[i].size[axis];
        }
        // The parts' own joins come before those between them.
        out.joins.insert(out.joins.end(), own.begin(), own.end());
    }

    JoinLayout out;

private:
    /// From the frame without overlaps to the finished batting.
    Length finishedAt(std::int64_t at, int axis) const {
        if (at <= 0)
            return {};
        if (at >= target_[axis])
            return axis == 0 ? finished_.width : finished_.length;
        return Length::nanometres(at) + overlap_.after;
    }
    Rect rect(const std::int64_t from[2], const std::int64_t size[2]) const {
        return {finishedAt(from[0], 0), finishedAt(from[1], 1), finishedAt(from[0] + size[0], 0),
                finishedAt(from[1] + size[1], 1)};
    }

    Size finished_;
    Overlap overlap_;
    std::int64_t target_[2];
};

/// Two pieces that meet corner to corner, or so nearly that the joins are not staggered.
bool meetAtCorner(const Rect& a, const Rect& b) {
    const auto near = [](Length u, Length v) { return abs(u - v) < kStagger; };
    return (near(a.x1, b.x0) || near(a.x0, b.x1)) && (near(a.y1, b.y0) || near(a.y0, b.y1)) &&
           !a.overlaps(b);
}

bool runsAlong(const Segment& join, const Segment& seam) {
    const auto close = [](Length u, Length v) { return abs(u - v) < kOffSeams; };
    const auto share = [](Length a0, Length a1, Length b0, Length b1) {
        return Interval{std::min(a0, a1), std::max(a0, a1)}.overlaps(
            {std::min(b0, b1), std::max(b0, b1)});
    };
    if (join.from.x == join.to.x && seam.from.x == seam.to.x)
        return close(join.from.x, seam.from.x) &&
               share(join.from.y, join.to.y, seam.from.y, seam.to.y);
    if (join.from.y == join.to.y && seam.from.y == seam.to.y)
        return close(join.from.y, seam.from.y) &&
               share(join.from.x, join.to.x, seam.from.x, seam.to.x);
    return false;
}

} // namespace

struct TreeLayouts::Whole {
    Row row;
};

TreeLayouts::TreeLayouts(const JoinTree& tree, Size finished, Length overlap,
                         const std::vector<Segment>& backingSeams)
    : whole_{std::make_unique<Whole>(Whole{rowOf(tree, tree.root)})}
    , finished_{finished}
    , overlap_{overlap}
    , backingSeams_{&backingSeams} {}

TreeLayouts::~TreeLayouts() = default;
TreeLayouts::TreeLayouts(TreeLayouts&&) noexcept = default;
TreeLayouts& TreeLayouts::operator=(TreeLayouts&&) noexcept = default;

JoinLayout TreeLayouts::plain() const {
    Sized s = sizedAs({Share::shortest});
    plainOrder(s);
    return laid(s);
}

JoinLayout TreeLayouts::shuffled(std::uint64_t number) const {
    Sized s = sizedAs({Share(number % 3)});
    shuffle(s, number);
    return laid(s);
}

TreeLayouts::Staggered TreeLayouts::staggered(int number) const {
    // First as short as can be; then one row after another, from the whole down, shares otherwise,
    // with all that follow or alone.
    std::vector<Share> shares{Share::shortest};
    if (number > 0) {
        const int n = number - 1;
        shares.assign(std::size_t(n / 4), Share::shortest);
        shares.push_back(n % 2 == 0 ? Share::even : Share::reverse);
        if (n / 2 % 2 == 1)
            shares.push_back(Share::shortest);
    }
    const Sized s = sizedAs(shares);
    Staggered out;
    bool all = true;
    const auto rank = [](const JoinLayout& l) { return std::tie(l.alongSeams, l.joined); };
    for (const Sized& ordered : staggeredOrders(s, kStagger.nm(), all)) {
        JoinLayout l = laid(ordered);
        if (l.corners == 0 && (!out.best || rank(l) < rank(*out.best)))
            out.best = std::move(l);
    }
    out.provenNone = !out.best && all && rigid(s);
    return out;
}

Sized TreeLayouts::sizedAs(const std::vector<Share>& shares) const {
    return sized(whole_->row, (finished_.width - overlap_).nm(), (finished_.length - overlap_).nm(),
                 shares);
}

JoinLayout TreeLayouts::laid(const Sized& s) const {
    Layer layer{finished_, overlap_};
    layer.place(s);
    JoinLayout& out = layer.out;
    for (const Segment& j : out.joins)
        out.joined += (j.to.x - j.from.x) + (j.to.y - j.from.y);
    int diagonals = 0;
    for (std::size_t i = 0; i < out.pieces.size(); ++i)
        for (std::size_t k = i + 1; k < out.pieces.size(); ++k)
            diagonals += meetAtCorner(out.pieces[i].area, out.pieces[k].area);
    out.corners = (diagonals + 1) / 2; // a meeting has two
    for (const Segment& j : out.joins)
        out.alongSeams += std::ranges::any_of(
            *backingSeams_, [&](const Segment& seam) { return runsAlong(j, seam); });
    return std::move(out);
}

} // namespace bastewright::batting
