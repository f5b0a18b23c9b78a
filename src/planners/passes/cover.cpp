#include "planners/passes/cover.h"

#include <algorithm>
#include <bit>
#include <set>

namespace bastewright {
namespace {

using Bits = std::vector<std::uint64_t>;

void set(Bits& bits, std::size_t i) {
    bits[i / 64] |= std::uint64_t{1} << (i % 64);
}

bool isPart(const Bits& part, const Bits& of) {
    for (std::size_t i = 0; i < part.size(); ++i)
        if ((part[i] & ~of[i]) != 0)
            return false;
    return true;
}

/// True where a table keeps the anchor on one side of a cut and has new area on the other.
bool linksAt(const AxisLines& lines, const AxisTable& table, Length at, std::size_t lo,
             std::size_t hi, std::size_t cut) {
    const Length edge = lines.cuts[cut].at;
    const bool below = at <= edge - anchorBelow(lines, table, cut) && lo <= cut && cut < hi;
    const bool above =
        at + table.size >= edge + anchorAbove(lines, table, cut) && lo < cut && cut <= hi;
    return below || above;
}

/// The cuts just outside a part of the top.
Window cutsRound(const Board& board, const Rect& part) {
    const auto after = [](const AxisLines& lines, Length at) {
        const auto cut = std::ranges::lower_bound(lines.cuts, at, {}, &Cut::at);
        return std::min<std::size_t>(static_cast<std::size_t>(cut - lines.cuts.begin()),
                                     lines.last());
    };
    return {cutBefore(board.x, part.x0), after(board.x, part.x1), cutBefore(board.y, part.y0),
            after(board.y, part.y1)};
}

/// What has to be covered, and by which windows it can be.
class Needs {
public:
    Needs(const Board& board, const Lie& lie, const FirstPass& first,
          const std::vector<Candidate>& candidates) {
        std::vector<Window> windows, holes;
        for (const Candidate& c : candidates) {
            windows.push_back(c.window);
            if (!c.unreached.empty())
                holes.push_back(cutsRound(board, c.unreached));
        }
        // Holes are told exactly where there is room for their cuts.
        auto cells = cellsOf(board, windows);
        windows.insert(windows.end(), holes.begin(), holes.end());
        if (auto finer = cellsOf(board, windows))
            cells = std::move(finer);
        if (!cells)
            return;
        const std::size_t w = cells->columns(), h = cells->rows();
        const std::size_t size = 3 * w * h + 1;
        for (const Candidate& c : candidates) {
            Bits bits((size + 63) / 64, 0);
            fill(board, lie, *cells, c, bits);
            if (mayBeFirst(board, first, c.window))
                set(bits, 3 * w * h);
            add(c.window, std::move(bits));
        }
        // What no candidate covers is no need: seams of strips that touch, ends of the top.
        all_.assign((size + 63) / 64, 0);
        for (std::size_t i = 0; i < w * h; ++i)
            set(all_, i);
        set(all_, 3 * w * h);
        for (std::size_t r = 0; r < h; ++r)
            for (std::size_t c = 1; c < w; ++c)
                set(all_, w * h + r * w + c);
        for (std::size_t r = 1; r < h; ++r)
            for (std::size_t c = 0; c < w; ++c)
                set(all_, 2 * w * h + r * w + c);
        by_.resize(size);
        for (std::size_t i = 0; i < cover_.size(); ++i)
            for (std::size_t k = 0; k < cover_[i].size(); ++k)
                for (std::uint64_t b = cover_[i][k] & all_[k]; b != 0; b &= b - 1)
                    by_[k * 64 + static_cast<std::size_t>(std::countr_zero(b))].push_back(i);
        blocked_.assign(size, Bits((cover_.size() + 63) / 64, 0));
        for (std::size_t e = 0; e < size; ++e)
            for (const std::size_t i : by_[e])
                set(blocked_[e], i);
        sound_ = true;
    }

    bool sound() const { return sound_; }
    const Bits& all() const { return all_; }
    const Bits& coverOf(std::size_t window) const { return cover_[window]; }
    const Window& window(std::size_t i) const { return windows_[i]; }
    const std::vector<std::size_t>& by(std::size_t need) const { return by_[need]; }

    /// So many windows at least for what is left: needs of which no two share a window.
    std::size_t least(const Bits& left, std::size_t most) const {
        Bits used((cover_.size() + 63) / 64, 0);
        std::size_t n = 0;
        for (std::size_t k = 0; k < left.size(); ++k)
            for (std::uint64_t b = left[k]; b != 0; b &= b - 1) {
                const Bits& by = blocked_[k * 64 + static_cast<std::size_t>(std::countr_zero(b))];
                bool apart = true;
                for (std::size_t i = 0; i < used.size() && apart; ++i)
                    apart = (used[i] & by[i]) == 0;
                if (!apart)
                    continue;
                if (++n > most)
                    return n;
                for (std::size_t i = 0; i < used.size(); ++i)
                    used[i] |= by[i];
            }
        return n;
    }

    /// The need that the fewest windows cover.
    std::size_t hardest(const Bits& left) const {
        std::size_t best = 0, fewest = ~std::size_t{0};
        for (std::size_t k = 0; k < left.size(); ++k)
            for (std::uint64_t b = left[k]; b != 0; b &= b - 1) {
                const std::size_t need = k * 64 + static_cast<std::size_t>(std::countr_zero(b));
                if (by_[need].size() < fewest) {
                    fewest = by_[need].size();
                    best = need;
                }
            }
        return best;
    }

private:
    std::vector<Window> windows_;
    std::vector<Bits> cover_;
    Bits all_;
    std::vector<std::vector<std::size_t>> by_; ///< windows that cover each need
    std::vector<Bits> blocked_;                ///< the same as bits
    bool sound_ = false;

    static void fill(const Board& board, const Lie& lie, const Cells& cells, const Candidate& c,
                     Bits& bits) {
        const std::size_t w = cells.columns(), h = cells.rows();
        const CellSet in = cellsIn(cells, c.window);
        const auto has = [&](std::size_t r, std::size_t k) {
            if ((in[r] >> k & 1) == 0)
                return false;
            return c.unreached.empty() ||
                   !areaOf(board, {cells.x[k], cells.x[k + 1], cells.y[r], cells.y[r + 1]})
                        .overlaps(c.unreached);
        };
        for (std::size_t r = 0; r < h; ++r)
            for (std::size_t k = 0; k < w; ++k) {
                const bool here = has(r, k);
                if (here)
                    set(bits, r * w + k);
                // A strip beside what is basted has its anchor on the rest of the table.
                if (k > 0 && (here || has(r, k - 1)) &&
                    linksAt(board.x, lie.x, c.at.x, c.window.x0, c.window.x1, cells.x[k]))
                    set(bits, w * h + r * w + k);
                if (r > 0 && (here || has(r - 1, k)) &&
                    linksAt(board.y, lie.y, c.at.y, c.window.y0, c.window.y1, cells.y[r]))
                    set(bits, 2 * w * h + r * w + k);
            }
    }

    /// Keeps windows that cover something no other does.
    void add(const Window& window, Bits&& bits) {
        for (const Bits& other : cover_)
            if (isPart(bits, other))
                return;
        for (std::size_t i = cover_.size(); i-- > 0;)
            if (isPart(cover_[i], bits)) {
                cover_.erase(cover_.begin() + static_cast<std::ptrdiff_t>(i));
                windows_.erase(windows_.begin() + static_cast<std::ptrdiff_t>(i));
            }
        cover_.push_back(std::move(bits));
        windows_.push_back(window);
    }
};

class Search {
public:
    Search(const Needs& needs, const CoverSearch& limits)
        : needs_{needs}
        , nodes_{limits.nodes}
        , enough_{limits.enough} {}

    std::set<std::vector<Window>> found;
    bool cutShort() const { return nodes_ < 0; }

    void run(const Bits& left, std::size_t count) {
        if (--nodes_ < 0 || found.size() >= enough_)
            return;
        if (std::ranges::all_of(left, [](std::uint64_t b) { return b == 0; })) {
            std::vector<Window> windows;
            for (const std::size_t i : chosen_)
                windows.push_back(needs_.window(i));
            std::ranges::sort(windows);
            found.insert(std::move(windows));
            return;
        }
        if (count == 0 || needs_.least(left, count) > count)
            return;
        for (const std::size_t i : needs_.by(needs_.hardest(left))) {
            Bits rest = left;
            for (std::size_t k = 0; k < rest.size(); ++k)
                rest[k] &= ~needs_.coverOf(i)[k];
            chosen_.push_back(i);
            run(rest, count - 1);
            chosen_.pop_back();
        }
    }

private:
    const Needs& needs_;
    int nodes_;
    std::size_t enough_;
    std::vector<std::size_t> chosen_;
};

} // namespace

FewestCover fewestCover(const Board& board, const Lie& lie, const FirstPass& first,
                        const std::vector<Candidate>& candidates, std::size_t most,
                        const CoverSearch& limits) {
    FewestCover out;
    const Needs needs{board, lie, first, candidates};
    if (!needs.sound())
        return out;
    out.least = std::max<std::size_t>(1, needs.least(needs.all(), kMostPasses));
    for (std::size_t n = out.least; n <= most && !out.sequence; ++n) {
        Search search{needs, limits};
        search.run(needs.all(), n);
        for (const std::vector<Window>& windows : search.found)
            if (auto s = bestOrder(board, lie, first, windows);
                s && (!out.sequence || s->cost < out.sequence->cost))
                out.sequence = std::move(s);
        if (!out.sequence && out.least == n && search.found.empty() && !search.cutShort())
            out.least = n + 1;
    }
    return out;
}

} // namespace bastewright
