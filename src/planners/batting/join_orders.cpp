#include "planners/batting/join_orders.h"

#include <algorithm>
#include <cstdlib>

namespace bastewright::batting {
namespace {

/// Orders of one part that are remembered, and steps spent on finding them.
constexpr std::size_t kMostOrders = 16;
constexpr int kMostSteps = 600;

/// Where joins end on the sides of a part: first and last side along the width, then along the
/// length; counted from the part's head-left corner.
using SideEnds = std::vector<std::int64_t>[2][2];

/// One staggered order of a part: that of its own parts, and which order each of them has.
struct Ordered {
    std::vector<std::size_t> order, which;
    SideEnds ends;
};

struct Orders {
    std::vector<Ordered> own;
    std::vector<Orders> parts;
};

bool apart(const std::vector<std::int64_t>& a, const std::vector<std::int64_t>& b,
           std::int64_t stagger) {
    for (const std::int64_t u : a)
        for (const std::int64_t v : b)
            if (std::abs(u - v) < stagger)
                return false;
    return true;
}

class Finder {
public:
    Finder(std::int64_t stagger, bool& all)
        : stagger_{stagger}
        , all_{all} {}

    Orders find(const Sized& s) {
        Orders out;
        if (s.parts.empty()) {
            out.own.emplace_back();
            return out;
        }
        for (const Sized& p : s.parts) {
            out.parts.push_back(find(p));
            if (out.parts.back().own.empty())
                return out;
        }
        Ordered so;
        std::vector<bool> placed(s.parts.size());
        int steps = kMostSteps;
        extend(s, out, so, placed, steps);
        return out;
    }

private:
    void extend(const Sized& s, Orders& out, Ordered& so, std::vector<bool>& placed, int& steps) {
        if (so.order.size() == s.parts.size()) {
            finish(s, out, so);
            return;
        }
        const int axis = s.row->axis();
        for (std::size_t i = 0; i < s.parts.size(); ++i) {
            if (placed[i])
                continue;
            for (std::size_t k = 0; k < out.parts[i].own.size(); ++k) {
                if (out.own.size() == kMostOrders || --steps < 0) {
                    all_ = false;
                    return;
                }
                if (!so.order.empty() &&
                    !apart(out.parts[so.order.back()].own[so.which.back()].ends[axis][1],
                           out.parts[i].own[k].ends[axis][0], stagger_))
                    continue;
                so.order.push_back(i);
                so.which.push_back(k);
                placed[i] = true;
                extend(s, out, so, placed, steps);
                placed[i] = false;
                so.order.pop_back();
                so.which.pop_back();
            }
        }
    }

    void finish(const Sized& s, Orders& out, Ordered so) {
        const int axis = s.row->axis(), across = 1 - axis;
        std::int64_t at = 0;
        for (std::size_t n = 0; n < so.order.size(); ++n) {
            const Ordered& part = out.parts[so.order[n]].own[so.which[n]];
            for (const int side : {0, 1}) {
                if (n > 0)
                    so.ends[across][side].push_back(at);
                for (const std::int64_t end : part.ends[across][side])
                    so.ends[across][side].push_back(at + end);
            }
            if (n == 0)
                so.ends[axis][0] = part.ends[axis][0];
            if (n + 1 == so.order.size())
                so.ends[axis][1] = part.ends[axis][1];
            at += s.parts[so.order[n]].size[axis];
        }
        out.own.push_back(std::move(so));
    }

    std::int64_t stagger_;
    bool& all_;
};

void put(Sized& s, const Orders& orders, const Ordered& so) {
    s.order = so.order;
    for (std::size_t n = 0; n < so.order.size(); ++n) {
        const Orders& part = orders.parts[so.order[n]];
        put(s.parts[so.order[n]], part, part.own[so.which[n]]);
    }
}

} // namespace

void plainOrder(Sized& s, unsigned sides) {
    if (s.parts.empty())
        return;
    const Row& row = *s.row;
    const Ends ends = endsOf(row, sides);
    std::swap(s.order[0], s.order[ends.first]);
    std::swap(s.order.back(), *std::ranges::find(s.order, ends.last));
    for (const std::size_t i : s.order)
        plainOrder(s.parts[i], (sides & row.acrossSides()) |
                                   (i == ends.first ? sides & row.firstSide() : 0) |
                                   (i == ends.last ? sides & row.lastSide() : 0));
}

void shuffle(Sized& s, std::uint64_t& seed) {
    for (std::size_t i = s.order.size(); i > 1; --i) {
        seed += 0x9e3779b97f4a7c15; // splitmix64
        std::uint64_t z = seed;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
        z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
        std::swap(s.order[i - 1], s.order[(z ^ (z >> 31)) % i]);
    }
    for (Sized& p : s.parts)
        shuffle(p, seed);
}

std::vector<Sized> staggeredOrders(const Sized& s, std::int64_t stagger, bool& all) {
    const Orders orders = Finder{stagger, all}.find(s);
    std::vector<Sized> out;
    for (const Ordered& so : orders.own) {
        out.push_back(s);
        put(out.back(), orders, so);
    }
    return out;
}

} // namespace bastewright::batting
