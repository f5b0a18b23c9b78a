#include "planners/passes/cover_needs.h"

#include <algorithm>

namespace bastewright {
namespace {

using Bits = CoverNeeds::Bits;

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

void fill(const Board& board, const Lie& lie, const Cells& cells, const Candidate& c, Bits& bits) {
    const std::size_t w = cells.columns(), h = cells.rows();
    const CellSet in = cellsIn(cells, c.window);
    std::vector<char> linksX(w, 0), linksY(h, 0);
    for (std::size_t k = 1; k < w; ++k)
        linksX[k] = linksAt(board.x, lie.x, c.at.x, c.window.x0, c.window.x1, cells.x[k]) ? 1 : 0;
    for (std::size_t r = 1; r < h; ++r)
        linksY[r] = linksAt(board.y, lie.y, c.at.y, c.window.y0, c.window.y1, cells.y[r]) ? 1 : 0;
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
            if (linksX[k] != 0 && (here || has(r, k - 1)))
                set(bits, w * h + r * w + k);
            if (linksY[r] != 0 && (here || has(r - 1, k)))
                set(bits, 2 * w * h + r * w + k);
        }
}

} // namespace

CoverNeeds::CoverNeeds(const Board& board, const Lie& lie, const FirstPass& first,
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
        eachNeed(cover_[i], [&](std::size_t need) { by_[need].push_back(i); });
    // Where no window holds the anchor beside a cut, no two passes meet there.
    for (std::size_t need = 0; need < size; ++need)
        if (by_[need].empty() && (all_[need / 64] >> (need % 64) & 1) != 0) {
            if (need >= w * h && need + 1 < size)
                all_[need / 64] &= ~(std::uint64_t{1} << (need % 64));
            else
                coverable_ = false;
        }
    blocked_.assign(size, Bits((cover_.size() + 63) / 64, 0));
    for (std::size_t e = 0; e < size; ++e)
        for (const std::size_t i : by_[e])
            set(blocked_[e], i);
    dropImplied();
    sound_ = true;
}

/// Whatever covers one need covers every other that all its windows cover.
void CoverNeeds::dropImplied() {
    std::vector<std::size_t> needs, kept;
    eachNeed(all_, [&](std::size_t need) { needs.push_back(need); });
    std::ranges::stable_sort(needs, {}, [&](std::size_t need) { return by_[need].size(); });
    for (const std::size_t need : needs)
        if (std::ranges::any_of(kept,
                                [&](std::size_t k) { return isPart(blocked_[k], blocked_[need]); }))
            all_[need / 64] &= ~(std::uint64_t{1} << (need % 64));
        else
            kept.push_back(need);
}

std::size_t CoverNeeds::least(const Bits& left, std::size_t most) const {
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

std::size_t CoverNeeds::hardest(const Bits& left) const {
    std::size_t best = 0, fewest = ~std::size_t{0};
    eachNeed(left, [&](std::size_t need) {
        if (by_[need].size() < fewest) {
            fewest = by_[need].size();
            best = need;
        }
    });
    return best;
}

void CoverNeeds::add(const Window& window, Bits&& bits) {
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

} // namespace bastewright
