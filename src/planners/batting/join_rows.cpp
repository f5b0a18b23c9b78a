#include "planners/batting/join_rows.h"

#include <algorithm>
#include <bit>
#include <climits>
#include <numeric>

namespace bastewright::batting {
namespace {

/// Common practice: a narrower show of a piece is a strip nobody wants to join.
constexpr std::int64_t kLeastPart = Length::inches(3).nm();

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
        p.cost[axis] = p.parts[0].cost[axis];
        for (auto q = p.parts.begin() + 1; q != p.parts.end(); ++q)
            p.cost[axis] = follow ? following(p.cost[axis], q->cost[axis])
                                  : shared(p.cost[axis], q->cost[axis]);
    }
    for (unsigned sides = 0; sides < p.ends.size(); ++sides)
        p.ends[sides] = endsOf(p, sides).count;
}

/// Shares `whole` among parts that follow one another.
std::vector<std::int64_t> share(const std::vector<Row>& parts, int axis, std::int64_t whole,
                                Share manner) {
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
    if (manner == Share::reverse)
        std::ranges::reverse(rooms);
    if (manner == Share::even) { // every part its due of what is left
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

Sized sizedFrom(const Row& row, const std::int64_t size[2], const std::vector<Share>& shares,
                std::size_t& turn) {
    Sized out{&row, {size[0], size[1]}, {}, {}};
    if (row.item >= 0)
        return out;
    const Share manner = shares[std::min(turn++, shares.size() - 1)];
    const int axis = row.axis();
    const std::vector<std::int64_t> extents = share(row.parts, axis, size[axis], manner);
    for (std::size_t i = 0; i < row.parts.size(); ++i) {
        std::int64_t part[2] = {size[0], size[1]};
        part[axis] = extents[i];
        out.parts.push_back(sizedFrom(row.parts[i], part, shares, turn));
    }
    out.order.resize(out.parts.size());
    std::iota(out.order.begin(), out.order.end(), std::size_t{0});
    return out;
}

} // namespace

Ends endsOf(const Row& p, unsigned sides) {
    const unsigned across = sides & p.acrossSides();
    const auto more = [&](const Row& q, unsigned side) {
        return q.ends[across | (sides & side)] - q.ends[across];
    };
    int all = int(p.parts.size() - 1) * std::popcount(across);
    for (const Row& q : p.parts)
        all += q.ends[across];
    Ends out{0, 1, INT_MAX};
    for (std::size_t i = 0; i < p.parts.size(); ++i)
        for (std::size_t k = 0; k < p.parts.size(); ++k) {
            const int count =
                all + more(p.parts[i], p.firstSide()) + more(p.parts[k], p.lastSide());
            if (i != k && count < out.count)
                out = {i, k, count};
        }
    return out;
}

Row rowOf(const JoinTree& tree, int at) {
    const JoinTree::Node& node = tree.nodes[std::size_t(at)];
    Row p;
    if (node.item >= 0) {
        p.item = node.item;
        p.turned = node.turned;
        for (const int axis : {0, 1}) {
            p.most[axis] = axis == 0 ? node.width : node.length;
            p.least[axis] = std::min(kLeastPart, p.most[axis]);
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

Sized sized(const Row& row, std::int64_t width, std::int64_t length,
            const std::vector<Share>& shares) {
    const std::int64_t size[2] = {width, length};
    std::size_t turn = 0;
    return sizedFrom(row, size, shares, turn);
}

bool rigid(const Sized& sized) {
    if (sized.parts.empty())
        return true;
    const int axis = sized.row->axis();
    std::int64_t most = 0;
    for (const Row& q : sized.row->parts)
        most += q.most[axis];
    return most == sized.size[axis] && std::ranges::all_of(sized.parts, rigid);
}

} // namespace bastewright::batting
