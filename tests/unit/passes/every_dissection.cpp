#include "unit/passes/every_dissection.h"

#include <algorithm>
#include <cstdint>
#include <vector>

namespace bastewright::testing {
namespace {

struct Piece {
    int x0, y0, x1, y1;
};

class Search {
public:
    Search(const Cells& cells, int pieces)
        : c_{cells}
        , pieces_{pieces} {
        const int u = c_.fieldWidth, v = c_.fieldLength;
        largest_ = u * v;
        later_ = std::max((u - 1) * v, u * (v - 1)); // an anchor on one side at least
    }

    bool found() { return cut(0, c_.width * c_.length); }

private:
    const Cells& c_;
    int pieces_, largest_, later_;
    std::vector<Piece> cut_;

    bool fits(int width, int length) const {
        return (width <= c_.fieldWidth && length <= c_.fieldLength) ||
               (c_.turning && width <= c_.fieldLength && length <= c_.fieldWidth);
    }

    /// Places a piece at the first cell that is free, in reading order; tries all sizes.
    bool cut(std::uint64_t taken, int left) {
        if (left == 0)
            return hasOrder();
        const int more = pieces_ - static_cast<int>(cut_.size());
        if (more == 0 || left > more * later_ + largest_ - later_)
            return false;
        int cell = 0;
        while ((taken >> cell & 1) != 0)
            ++cell;
        const int x0 = cell % c_.width, y0 = cell / c_.width;
        for (int x1 = x0 + 1; x1 <= c_.width; ++x1) {
            if ((taken >> (y0 * c_.width + x1 - 1) & 1) != 0)
                break;
            std::uint64_t now = taken;
            for (int y1 = y0 + 1; y1 <= c_.length && fits(x1 - x0, y1 - y0); ++y1) {
                for (int x = x0; x < x1; ++x)
                    now |= std::uint64_t{1} << ((y1 - 1) * c_.width + x);
                cut_.push_back({x0, y0, x1, y1});
                const bool done = cut(now, left - (x1 - x0) * (y1 - y0));
                cut_.pop_back();
                if (done)
                    return true;
            }
        }
        return false;
    }

    /// Twice the places, so that the middle of an odd top is whole.
    bool mayStart(const Piece& p) const {
        if (p.x1 - p.x0 < std::min(2, c_.width) || p.y1 - p.y0 < std::min(2, c_.length))
            return false; // a scrap: all of its rows are left to its neighbours
        if (c_.centred)
            return p.x0 + p.x1 == c_.width && p.y0 + p.y1 == c_.length;
        const auto holds = [&](int u, int v) {
            const auto along = [](int lo, int hi, int top, int field) {
                const int margin = std::min(4, field); // two cells, or half the field
                return std::max(2 * hi, std::min(2 * top, top + margin)) -
                           std::min(2 * lo, std::max(0, top - margin)) <=
                       2 * field;
            };
            return along(p.x0, p.x1, c_.width, u) && along(p.y0, p.y1, c_.length, v);
        };
        return holds(c_.fieldWidth, c_.fieldLength) ||
               (c_.turning && holds(c_.fieldLength, c_.fieldWidth));
    }

    bool mayFollow(const Piece& p, unsigned basted) const {
        bool left = false, right = false, head = false, foot = false;
        for (std::size_t i = 0; i < cut_.size(); ++i) {
            if ((basted >> i & 1U) == 0)
                continue;
            const Piece& q = cut_[i];
            const bool beside = std::min(p.y1, q.y1) > std::max(p.y0, q.y0);
            const bool above = std::min(p.x1, q.x1) > std::max(p.x0, q.x0);
            left |= beside && q.x1 == p.x0;
            right |= beside && q.x0 == p.x1;
            head |= above && q.y1 == p.y0;
            foot |= above && q.y0 == p.y1;
        }
        return (left || right || head || foot) &&
               fits(p.x1 - p.x0 + int(left) + int(right), p.y1 - p.y0 + int(head) + int(foot));
    }

    bool hasOrder() const {
        const std::size_t n = cut_.size();
        std::vector<bool> reached(std::size_t{1} << n, false);
        for (std::size_t i = 0; i < n; ++i)
            if (mayStart(cut_[i]))
                reached[std::size_t{1} << i] = true;
        for (unsigned set = 1; set < reached.size(); ++set)
            if (reached[set])
                for (std::size_t i = 0; i < n; ++i)
                    if ((set >> i & 1U) == 0 && !reached[set | 1U << i] && mayFollow(cut_[i], set))
                        reached[set | 1U << i] = true;
        return reached.back();
    }
};

} // namespace

int leastByEveryDissection(const Cells& cells, int most) {
    for (int pieces = 1; pieces <= most; ++pieces)
        if (Search{cells, pieces}.found())
            return pieces;
    return most + 1;
}

} // namespace bastewright::testing
