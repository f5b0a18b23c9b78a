#include "planners/batting/join_layout.h"

#include <algorithm>
#include <numeric>

namespace bastewright::batting {
namespace {

/// Common practice: a narrower show of a piece is a strip nobody wants to join.
constexpr std::int64_t kLeastShown = Length::inches(3).nm();

/// Join length a part costs for one more nanometre of its extent, by stretches of extent.
struct Stretch {
    std::int64_t size;
    int slope;
};
using Cost = std::vector<Stretch>; // slopes never fall: costs are convex

/// A tree with rows of any number of parts.
struct Row {
    int item = -1;
    bool turned = false;
    bool beside = false; ///< its parts lie side by side
    std::vector<Row> parts;
    std::int64_t most[2] = {0, 0}, least[2] = {0, 0}; ///< width, length
    Cost cost[2];
};

std::int64_t total(const Cost& c) {
    return std::accumulate(c.begin(), c.end(), std::int64_t{0},
                           [](std::int64_t sum, Stretch s) { return sum + s.size; });
}

/// Parts that share one extent: all have it, so slopes add up.
Cost shared(const std::vector<Row>& parts, int axis, int joins) {
    std::vector<std::int64_t> ends;
    for (const Row& p : parts) {
        std::int64_t at = 0;
        for (const Stretch s : p.cost[axis])
            ends.push_back(at += s.size);
    }
    std::ranges::sort(ends);
    std::int64_t most = INT64_MAX;
    for (const Row& p : parts)
        most = std::min(most, total(p.cost[axis]));
    Cost out;
    std::int64_t from = 0;
    for (const std::int64_t end : ends) {
        const std::int64_t to = std::min(end, most);
        if (to <= from)
            continue;
        int slope = joins;
        for (const Row& p : parts) {
            std::int64_t at = 0;
            for (const Stretch s : p.cost[axis])
                if ((at += s.size) > from) {
                    slope += s.slope;
                    break;
                }
        }
        out.push_back({to - from, slope});
        from = to;
    }
    return out;
}

/// Parts that follow one another: the cheap stretches are used first.
Cost following(const std::vector<Row>& parts, int axis) {
    Cost out;
    for (const Row& p : parts)
        out.insert(out.end(), p.cost[axis].begin(), p.cost[axis].end());
    std::ranges::stable_sort(out, {}, &Stretch::slope);
    return out;
}

void measure(Row& p) {
    for (const int axis : {0, 1}) {
        const bool follow = p.beside == (axis == 0);
        p.most[axis] = follow ? 0 : INT64_MAX;
        for (const Row& q : p.parts) {
            p.most[axis] =
                follow ? p.most[axis] + q.most[axis] : std::min(p.most[axis], q.most[axis]);
            p.least[axis] =
                follow ? p.least[axis] + q.least[axis] : std::max(p.least[axis], q.least[axis]);
        }
        p.least[axis] = std::min(p.least[axis], p.most[axis]);
        p.cost[axis] =
            follow ? following(p.parts, axis) : shared(p.parts, axis, int(p.parts.size()) - 1);
    }
}

Row rowOf(const JoinTree& tree, int at) {
    const JoinTree::Node& node = tree.nodes[std::size_t(at)];
    Row p;
    if (node.item >= 0) {
        p.item = node.item;
        p.turned = node.turned;
        for (const int axis : {0, 1}) {
            p.most[axis] = axis == 0 ? node.width : node.length;
            p.least[axis] = std::min(kLeastShown, p.most[axis]);
            p.cost[axis] = {{p.most[axis], 0}};
        }
        return p;
    }
    p.beside = node.sideBySide;
    for (const int child : {node.first, node.second}) {
        Row q = rowOf(tree, child);
        if (q.item < 0 && q.beside == p.beside)
            p.parts.insert(p.parts.end(), std::make_move_iterator(q.parts.begin()),
                           std::make_move_iterator(q.parts.end()));
        else
            p.parts.push_back(std::move(q));
    }
    measure(p);
    return p;
}

/// The choices of one variant, drawn one after another.
class Choices {
public:
    explicit Choices(Variant v)
        : state_{v} {}
    /// 0 … n-1; always 0 in variant 0.
    std::size_t next(std::size_t n) {
        if (state_ == 0 || n < 2)
            return 0;
        state_ += 0x9e3779b97f4a7c15; // splitmix64
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
        z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
        return std::size_t((z ^ (z >> 31)) % n);
    }

private:
    std::uint64_t state_;
};

/// Shares `whole` among parts that follow one another.
std::vector<std::int64_t> share(const std::vector<Row>& parts, int axis, std::int64_t whole,
                                std::size_t manner) {
    std::vector<std::int64_t> out;
    for (const Row& p : parts)
        out.push_back(p.least[axis]);
    std::int64_t left = whole - std::accumulate(out.begin(), out.end(), std::int64_t{0});
    if (left < 0) { // pieces show less than one would like, each its share
        const double part = double(whole) / double(whole - left);
        left = whole;
        for (std::int64_t& o : out)
            left -= o = std::int64_t(double(o) * part);
    }
    struct Room {
        std::size_t part;
        std::int64_t size;
        int slope;
    };
    std::vector<Room> rooms;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        std::int64_t skip = out[i];
        for (const Stretch s : parts[i].cost[axis]) {
            const std::int64_t used = std::min(skip, s.size);
            skip -= used;
            if (s.size > used)
                rooms.push_back({i, s.size - used, s.slope});
        }
    }
    std::ranges::stable_sort(rooms, {}, &Room::slope);
    if (manner == 1)
        std::ranges::reverse(rooms);
    if (manner == 2) { // every part its due of what is left
        std::int64_t most = 0;
        for (const Room& r : rooms)
            most += r.size;
        for (Room& r : rooms)
            r.size = most == 0 ? 0 : std::int64_t(double(r.size) * (double(left) / double(most)));
        for (const Room& r : rooms) {
            out[r.part] += r.size;
            left -= r.size;
        }
        for (std::size_t i = 0; i < parts.size() && left > 0; ++i) {
            const std::int64_t add = std::min(left, parts[i].most[axis] - out[i]);
            out[i] += add;
            left -= add;
        }
        return out;
    }
    for (const Room& r : rooms) {
        const std::int64_t add = std::min(left, r.size);
        out[r.part] += add;
        left -= add;
    }
    return out;
}

class Layer {
public:
    Layer(Size finished, Length overlap, Variant variant)
        : finished_{finished}
        , overlap_{overlap}
        , target_{(finished.width - overlap).nm(), (finished.length - overlap).nm()}
        , choices_{variant} {}

    void place(const Row& p, const std::int64_t from[2], const std::int64_t size[2]) {
        if (p.item >= 0) {
            out.pieces.push_back({p.item, p.turned, rect(from, size)});
            return;
        }
        const int axis = p.beside ? 0 : 1;
        std::vector<std::int64_t> shares = share(p.parts, axis, size[axis], choices_.next(3));
        std::vector<std::size_t> order(p.parts.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        for (std::size_t i = order.size(); i > 1; --i)
            std::swap(order[i - 1], order[i - 1 - choices_.next(i)]);
        std::int64_t at[2] = {from[0], from[1]};
        std::vector<Segment> own;
        for (const std::size_t i : order) {
            std::int64_t part[2] = {size[0], size[1]};
            part[axis] = shares[i];
            if (i != order.front()) {
                const std::int64_t line[2] = {axis == 0 ? 0 : size[0], axis == 0 ? size[1] : 0};
                const Rect r = rect(at, line);
                own.push_back({{r.x0, r.y0}, {r.x1, r.y1}});
            }
            place(p.parts[i], at, part);
            at[axis] += shares[i];
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
    Choices choices_;
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

struct TreeLayouts::Part {
    Row row;
};

TreeLayouts::TreeLayouts(const JoinTree& tree, Size finished, Length overlap,
                         const std::vector<Segment>& backingSeams)
    : root_{std::make_unique<Part>(rowOf(tree, tree.root))}
    , finished_{finished}
    , overlap_{overlap}
    , backingSeams_{&backingSeams} {}

TreeLayouts::~TreeLayouts() = default;
TreeLayouts::TreeLayouts(TreeLayouts&&) noexcept = default;
TreeLayouts& TreeLayouts::operator=(TreeLayouts&&) noexcept = default;

JoinLayout TreeLayouts::layOut(Variant variant) const {
    Layer layer{finished_, overlap_, variant};
    const std::int64_t from[2] = {0, 0};
    const std::int64_t size[2] = {(finished_.width - overlap_).nm(),
                                  (finished_.length - overlap_).nm()};
    layer.place(root_->row, from, size);
    JoinLayout& out = layer.out;
    for (const Segment& j : out.joins)
        out.joined += (j.to.x - j.from.x) + (j.to.y - j.from.y);
    int diagonals = 0;
    for (std::size_t i = 0; i < out.pieces.size(); ++i)
        for (std::size_t k = i + 1; k < out.pieces.size(); ++k)
            diagonals += meetAtCorner(out.pieces[i].area, out.pieces[k].area);
    out.corners = (diagonals + 1) / 2; // a meeting has two
    for (const Segment& j : out.joins)
        out.alongSeams +=
            std::ranges::any_of(*backingSeams_, [&](const Segment& s) { return runsAlong(j, s); });
    return std::move(layer.out);
}

} // namespace bastewright::batting
